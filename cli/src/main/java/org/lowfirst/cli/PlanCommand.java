package org.lowfirst.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.lowfirst.app.file.FileBytes;
import org.lowfirst.app.file.Problem;
import org.lowfirst.app.file.ProblemReport;
import org.lowfirst.app.file.SourceText;
import org.lowfirst.app.plan.FilePlan;
import org.lowfirst.app.plan.Glyphs;
import org.lowfirst.app.plan.PlanFileLimits;
import org.lowfirst.app.plan.PlanJson;
import org.lowfirst.app.plan.PlanSheet;
import org.lowfirst.app.plan.PlannedFile;
import org.lowfirst.app.plan.PlanningFromAFile;
import org.lowfirst.app.plan.RefusedFile;
import org.lowfirst.gas.Oxygen;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lowfirst plan FILE}. */
@Command(
        name = "plan",
        description =
                "Plans the fills of a plan file: which supply to open, in which order, where each stage ends, and whether"
                        + " each bottle gets full.",
        footer = {
            "",
            "Exit codes: 0 every bottle reaches its target; 3 one cannot, and the plan says why; 2 the file or the command"
                    + " line is wrong; 1 anything else.",
            "examples/plan-us.yaml and examples/plan-eu.yaml show plan files."
        })
final class PlanCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "Plan file in YAML; - reads what is piped in.")
    private String file = "";

    @Option(names = "--json", description = "Print one JSON object instead of the sheet.")
    private boolean json;

    PlanCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        FileBytes read = FileBytes.of(file, terminal.in(), PlanFileLimits.MOST_BYTES);
        if (read instanceof FileBytes.Missing missing) {
            terminal.err().println(missing.why());
            return ExitCode.BAD_INPUT;
        }
        FileBytes.Found found = (FileBytes.Found) read;
        FilePlan plan = new PlanningFromAFile(Oxygen.schmidtWagner()).plan(found.name(), found.bytes());
        return plan instanceof PlannedFile planned ? print(planned) : refuse((RefusedFile) plan);
    }

    private int print(PlannedFile planned) {
        report(planned.source(), planned.warnings());
        String result =
                json ? PlanJson.of(planned) : PlanSheet.of(planned, terminal.blocks() ? Glyphs.BLOCKS : Glyphs.ASCII);
        terminal.out().print(result);
        return planned.reachesAll() ? ExitCode.DONE : ExitCode.TARGET_NOT_REACHED;
    }

    private int refuse(RefusedFile refused) {
        report(refused.source(), refused.problems());
        long errors = refused.errors();
        terminal.err()
                .println(errors == 1 ? "1 error, nothing was planned." : errors + " errors, nothing was planned.");
        return ExitCode.BAD_INPUT;
    }

    private void report(SourceText source, List<Problem> problems) {
        ProblemReport report = new ProblemReport(source);
        problems.forEach(problem -> terminal.err().print(report.show(problem)));
    }
}
