package org.lowfirst.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.file.Watch;
import org.lowfirst.app.study.StudyCsv;
import org.lowfirst.app.study.StudyDone;
import org.lowfirst.app.study.StudyJson;
import org.lowfirst.app.study.StudySheet;
import org.lowfirst.app.study.StudyingFromAFile;
import org.lowfirst.gas.Oxygen;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lowfirst study FILE}. */
@Command(
        name = "study",
        description =
                "Simulates years of a bench for each way of running it (bank size, exchange habit, supply, store, booster)"
                        + " and compares what a fill costs.",
        footer = {
            "",
            "Ctrl-C ends the study and prints what the runs done so far give. The same file gives the same digits on any"
                    + " number of threads.",
            "",
            "Exit codes: 0 all runs were done; 3 it was ended early, and the sheet says after how many; 2 the file or the"
                    + " command line is wrong; 1 anything else.",
            "examples/study.yaml shows a study file."
        })
final class StudyCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "Study file in YAML; - reads what is piped in.")
    private String file = "";

    @ArgGroup
    private Form form = new Form();

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "Threads to work on; left out: as many as there are cores.")
    private @Nullable Integer threads;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            description = "Work for at most so long; at least two runs are done.")
    private @Nullable Double seconds;

    /** What is printed. */
    static final class Form {

        @Option(names = "--json", description = "Print one JSON object instead of the sheet.")
        private boolean json;

        @Option(names = "--csv", description = "Print a table with one line for each alternative.")
        private boolean csv;
    }

    StudyCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        int working = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
        if (working < 1 || working > 256) {
            terminal.err().println("lowfirst study: the threads (" + working + ") must be 1 to 256.");
            return ExitCode.BAD_INPUT;
        }
        Progress progress = new Progress(terminal, seconds);
        try (Interruption interruption = Interruption.watched()) {
            Watch watch = (done, share) -> {
                progress.at(done, share);
                return !progress.timeIsUp() && !interruption.asked();
            };
            StudyingFromAFile studying = new StudyingFromAFile(Oxygen.schmidtWagner());
            return new AnsweringAFile(terminal)
                    .answer(
                            file,
                            "nothing was simulated",
                            found -> studying.study(found.name(), found.bytes(), working, watch),
                            this::print);
        }
    }

    private int print(StudyDone study) {
        terminal.out().print(form.csv ? StudyCsv.of(study) : form.json ? StudyJson.of(study) : StudySheet.of(study));
        terminal.out().flush();
        return study.whole() ? ExitCode.DONE : ExitCode.ENDED_EARLY;
    }
}
