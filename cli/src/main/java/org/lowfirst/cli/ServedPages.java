package org.lowfirst.cli;

import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.web.ServeRequest;
import org.lowfirst.web.Serving;
import org.lowfirst.web.WebApplication;

/** The pages being served, with the journal behind them. */
final class ServedPages implements AutoCloseable {

    private final Serving.Started started;
    private final Benches benches;

    private ServedPages(Serving.Started started, Benches benches) {
        this.started = started;
        this.benches = benches;
    }

    /** What came of starting: the pages, or a sentence. */
    sealed interface Start {

        record Up(ServedPages pages) implements Start {}

        record Refused(String why) implements Start {}
    }

    /** Serves until the process is told to stop; answers only when serving cannot start. */
    static int untilStopped(ServeOptions options, Terminal terminal) throws InterruptedException {
        Start start = start(options);
        if (start instanceof Start.Refused refused) {
            terminal.err().println("lowfirst: " + refused.why());
            return ExitCode.FAILED;
        }
        ServedPages pages = ((Start.Up) start).pages();
        CountDownLatch stopped = new CountDownLatch(1);
        Runtime.getRuntime()
                .addShutdownHook(new Thread(
                        () -> {
                            pages.close();
                            stopped.countDown();
                        },
                        "stop"));
        terminal.out().println("Lowfirst is at " + pages.url());
        terminal.out()
                .println("The journal is in " + pages.benches.journal().file().toAbsolutePath());
        terminal.out().println("Ctrl+C stops it.");
        terminal.out().flush();
        stopped.await();
        return ExitCode.DONE;
    }

    /** Opens the journal and starts serving. */
    static Start start(ServeOptions options) {
        return start(options.data(), options.bind(), options.port(), Clock.system(ZoneId.systemDefault()));
    }

    /**
     * Opens a journal and starts serving.
     *
     * @param data folder of the journal
     * @param clock what time it is at the bench
     */
    static Start start(Path data, String bind, int port, Clock clock) {
        Path file = JournalFile.in(data);
        Opening opening = Journal.open(file);
        if (opening instanceof Opening.CannotOpen failed) {
            return new Start.Refused(failed.trouble().inWords());
        }
        Opening.Opened opened = (Opening.Opened) opening;
        Benches benches = new Benches(opened.journal(), clock, Oxygen.schmidtWagner(), Locale.ENGLISH);
        Serving serving = WebApplication.start(new ServeRequest(bind, port, benches, clock, new RandomIds()));
        if (serving instanceof Serving.Started started) {
            return new Start.Up(new ServedPages(started, benches));
        }
        benches.close();
        return new Start.Refused(((Serving.Refused) serving).why());
    }

    Benches benches() {
        return benches;
    }

    URI url() {
        return started.url();
    }

    @Override
    public void close() {
        started.close();
        benches.close();
    }
}
