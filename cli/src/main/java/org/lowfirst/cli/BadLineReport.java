package org.lowfirst.cli;

import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.Problem;
import org.lowfirst.app.file.ProblemReport;
import org.lowfirst.app.file.SourceText;
import org.lowfirst.app.journal.Importing;

/** Shows a wrong line of an export as other files are shown: place, sentence, the line and a caret. */
final class BadLineReport {

    private BadLineReport() {}

    static String show(String file, Importing.BadLine bad) {
        // The one line that is known, at its own number.
        SourceText source = new SourceText(file, "\n".repeat(bad.line() - 1) + bad.text());
        Place place = new Place(bad.line(), Math.max(1, bad.column()), 1);
        return new ProblemReport(source).show(new Problem(Problem.Severity.ERROR, place, bad.what()));
    }
}
