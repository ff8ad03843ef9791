package org.lowfirst.station;

/** The one rule for the text of an id. A loop rather than a pattern: a long journal makes millions of ids. */
final class IdText {

    private static final int LONGEST = 64;

    private IdText() {}

    static String checked(String what, String value) {
        boolean good = !value.isEmpty() && value.length() <= LONGEST && letterOrDigit(value.charAt(0));
        for (int i = 1; good && i < value.length(); i++) {
            char c = value.charAt(i);
            good = letterOrDigit(c) || c == '.' || c == '_' || c == '-';
        }
        if (!good) {
            throw new IllegalArgumentException(
                    "The " + what + " id (" + value
                            + ") must be 1 to 64 letters, digits, points, dashes or underscores and begin with a letter or digit.");
        }
        return value;
    }

    private static boolean letterOrDigit(char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    }
}
