package org.lowfirst.station.rules;

/** What came of reading a rule file. */
public sealed interface RuleBookReading {

    record Read(RuleBook book) implements RuleBookReading {}

    /**
     * Reading stopped at the first thing wrong.
     *
     * @param line from 1
     * @param column from 1
     * @param text the line itself
     */
    record Malformed(String file, int line, int column, String problem, String text) implements RuleBookReading {

        /** Problem, place, line and caret, for a log or a person editing the file. */
        public String message() {
            return problem + "\n" + file + ":" + line + ":" + column + "\n" + text + "\n"
                    + " ".repeat(Math.max(0, column - 1)) + "^";
        }
    }
}
