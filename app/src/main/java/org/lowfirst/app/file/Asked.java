package org.lowfirst.app.file;

import java.util.List;

/** What came of a question that was asked in a file. */
public sealed interface Asked<T> {

    /**
     * It was answered.
     *
     * @param source the file
     * @param answer what was found
     * @param warnings what a person should know about the file
     */
    record Answered<T>(SourceText source, T answer, List<Problem> warnings) implements Asked<T> {

        public Answered {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * The file cannot be answered; nothing was worked out.
     *
     * @param source the file
     * @param problems at least one error, and warnings, in the order of the file
     */
    record Refused<T>(SourceText source, List<Problem> problems) implements Asked<T> {

        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
