package org.lowfirst.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.file.Watch;
import org.lowfirst.app.session.PlannedSession;
import org.lowfirst.app.session.PlanningFromASessionFile;
import org.lowfirst.app.session.SessionJson;
import org.lowfirst.app.session.SessionSheet;
import org.lowfirst.gas.Oxygen;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lowfirst session FILE}. */
@Command(
        name = "session",
        description =
                "Plans several bottles on one bank: which bottle goes on which supply in which order so that most end"
                        + " ready, and why.",
        footer = {
            "",
            "Ctrl-C ends the search and prints the best plan so far. A plan that was not cut off is the same for the same"
                    + " file on any machine.",
            "",
            "Exit codes: 0 every bottle ends ready; 3 one does not, and the sheet says what would help; 2 the file or the"
                    + " command line is wrong; 1 anything else.",
            "examples/session.yaml shows a session file."
        })
final class SessionCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "Session file in YAML; - reads what is piped in.")
    private String file = "";

    @Option(names = "--json", description = "Print one JSON object instead of the sheet.")
    private boolean json;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            description = "Look for at most so long and print the best plan so far.")
    private @Nullable Double seconds;

    SessionCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Progress progress = new Progress(terminal, seconds);
        try (Interruption interruption = Interruption.watched()) {
            Watch watch = (done, share) -> {
                progress.at(done, share);
                return !progress.timeIsUp() && !interruption.asked();
            };
            PlanningFromASessionFile planning = new PlanningFromASessionFile(Oxygen.schmidtWagner());
            return new AnsweringAFile(terminal)
                    .answer(
                            file,
                            "nothing was planned",
                            found -> planning.plan(found.name(), found.bytes(), watch),
                            this::print);
        }
    }

    private int print(PlannedSession session) {
        terminal.out().print(json ? SessionJson.of(session) : SessionSheet.of(session));
        terminal.out().flush();
        return session.allReady() ? ExitCode.DONE : ExitCode.NOT_ALL_READY;
    }
}
