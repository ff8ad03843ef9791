package org.lowfirst.cli;

import java.time.Clock;
import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code lowfirst demo}. */
@Command(
        name = "demo",
        description = {
            "Plays an invented bench: somebody follows the guide through the pages while every step is told here,"
                    + " and in the end what nobody there could know is told beside what the journal makes of it.",
            "It works on a folder of its own that is removed afterwards; your journal is not touched. Ctrl+C stops it."
        })
final class DemoCommand implements Callable<Integer> {

    private static final double MS_PER_S = 1_000.0;

    private final Terminal terminal;

    @Option(names = "--live", description = "Play it now.")
    private boolean live;

    @Option(
            names = "--fills",
            paramLabel = "N",
            defaultValue = "6",
            description = "How many bottles come (${DEFAULT-VALUE}).")
    private int fills;

    @Option(
            names = "--pace",
            paramLabel = "S",
            defaultValue = "0.5",
            description = "Seconds between two lines (${DEFAULT-VALUE}).")
    private double pace_s;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "What chance begins with; the same number plays the same (${DEFAULT-VALUE}).")
    private long seed;

    @Option(names = "--port", paramLabel = "N", description = "Port to serve the pages on. Left out: one that is free.")
    private @Nullable Integer port;

    @Option(names = "--stay", description = "Keep serving the pages after the last bottle, until Ctrl+C.")
    private boolean stay;

    DemoCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws InterruptedException {
        if (!live) {
            terminal.err().println("lowfirst demo: nothing was played.\nMaybe say --live.");
            return ExitCode.BAD_INPUT;
        }
        if (fills < 1 || fills > 200 || !(pace_s >= 0.0 && pace_s <= 60.0)) {
            terminal.err()
                    .printf(
                            Locale.ROOT,
                            "lowfirst demo: the number of fills (%d) must be 1 to 200 and the pace (%s s) 0 to 60 s.%n",
                            fills,
                            pace_s);
            return ExitCode.BAD_INPUT;
        }
        ServedPlay.Wish wish = new ServedPlay.Wish(
                seed,
                fills,
                Duration.ofMillis(Math.round(MS_PER_S * pace_s)),
                port == null ? 0 : port,
                stay,
                Clock.systemUTC().instant());
        return ServedPlay.until(wish, terminal);
    }
}
