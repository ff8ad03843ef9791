package org.lowfirst.station;

import java.util.regex.Pattern;

/** The one rule for the text of an id. */
final class IdText {

    private static final Pattern ALLOWED = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,63}");

    private IdText() {}

    static String checked(String what, String value) {
        if (!ALLOWED.matcher(value).matches()) {
            throw new IllegalArgumentException(
                    "The " + what + " id (" + value
                            + ") must be 1 to 64 letters, digits, points, dashes or underscores and begin with a letter or digit.");
        }
        return value;
    }
}
