package org.lowfirst.cli;

import java.util.List;
import org.lowfirst.app.file.Problem;
import org.lowfirst.app.file.ProblemReport;
import org.lowfirst.app.file.SourceText;

/** Shows the problems of a file that was refused. */
final class ProblemPrinter {

    private final Terminal terminal;

    ProblemPrinter(Terminal terminal) {
        this.terminal = terminal;
    }

    /**
     * Each problem under its line, then how many errors there are.
     *
     * @param outcome what did not happen, e.g. "nothing was planned"
     */
    void print(SourceText source, List<Problem> problems, String outcome) {
        show(source, problems);
        count(problems, outcome);
    }

    void show(SourceText source, List<Problem> problems) {
        ProblemReport report = new ProblemReport(source);
        problems.forEach(problem -> terminal.err().print(report.show(problem)));
    }

    void count(List<Problem> problems, String outcome) {
        long errors = problems.stream().filter(Problem::isError).count();
        terminal.err().println(errors + (errors == 1 ? " error, " : " errors, ") + outcome + ".");
    }
}
