package org.lowfirst.cli;

import java.util.concurrent.Callable;
import org.lowfirst.app.camp.CampDone;
import org.lowfirst.app.camp.CampJson;
import org.lowfirst.app.camp.CampSheet;
import org.lowfirst.app.camp.PlanningFromACampFile;
import org.lowfirst.gas.Oxygen;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lowfirst camp FILE}. */
@Command(
        name = "camp",
        description =
                "Works out how many supplies a camp needs: pilots, days and bottles in, fills and days covered out.",
        footer = {
            "",
            "Exit codes: 0 a number of supplies was found; 3 not even the largest bank is enough; 2 the file or the command"
                    + " line is wrong; 1 anything else.",
            "examples/camp.yaml shows a camp file."
        })
final class CampCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "Camp file in YAML; - reads what is piped in.")
    private String file = "";

    @Option(names = "--json", description = "Print one JSON object instead of the sheet.")
    private boolean json;

    CampCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        PlanningFromACampFile planning = new PlanningFromACampFile(Oxygen.schmidtWagner());
        return new AnsweringAFile(terminal)
                .answer(
                        file,
                        "nothing was worked out",
                        found -> planning.plan(found.name(), found.bytes()),
                        this::print);
    }

    private int print(CampDone camp) {
        terminal.out().print(json ? CampJson.of(camp) : CampSheet.of(camp));
        return camp.found() ? ExitCode.DONE : ExitCode.NOT_ENOUGH;
    }
}
