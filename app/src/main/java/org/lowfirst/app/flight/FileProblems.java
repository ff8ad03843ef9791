package org.lowfirst.app.flight;

import java.util.List;
import org.lowfirst.app.file.Problem;
import org.lowfirst.app.file.SourceText;

/**
 * The problems of one file.
 *
 * @param source the flight file or its track
 * @param problems in the order of the file
 */
public record FileProblems(SourceText source, List<Problem> problems) {

    public FileProblems {
        problems = List.copyOf(problems);
    }
}
