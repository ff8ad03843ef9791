package org.lowfirst.app.file;

import org.jspecify.annotations.Nullable;

/**
 * Something a person should know about the file they gave.
 *
 * @param severity whether it stops the plan
 * @param place where in the file, or null when it is about the file as a whole
 * @param sentence what is wrong, the value and the limit with units, and what to do
 */
public record Problem(Severity severity, @Nullable Place place, String sentence) {

    /** Whether a problem stops the plan. */
    public enum Severity {
        ERROR("error"),
        WARNING("warning");

        private final String word;

        Severity(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }
}
