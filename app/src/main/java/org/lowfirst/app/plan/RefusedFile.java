package org.lowfirst.app.plan;

import java.util.List;
import org.lowfirst.app.file.Problem;
import org.lowfirst.app.file.SourceText;

/**
 * A file that cannot be planned; nothing was changed.
 *
 * @param source the file
 * @param problems at least one error, and warnings, in the order of the file
 */
public record RefusedFile(SourceText source, List<Problem> problems) implements FilePlan {

    public RefusedFile {
        problems = List.copyOf(problems);
    }

    /** How many of the problems are errors. */
    public long errors() {
        return problems.stream().filter(Problem::isError).count();
    }
}
