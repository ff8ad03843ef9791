package org.lowfirst.gas.internal;

/** One line of a substance file, to point at when something is wrong with it. */
record SourceLine(String file, int number, String text) {

    MalformedSubstanceFile malformed(String problem, int column) {
        return new MalformedSubstanceFile(problem, file, number, column, text);
    }

    /** Reads a number and points at it when it is none. */
    double number(String token, int column) {
        double value;
        try {
            value = Double.parseDouble(token);
        } catch (NumberFormatException unreadable) {
            throw malformed("'" + token + "' is not a number.", column);
        }
        if (!Double.isFinite(value)) {
            throw malformed("'" + token + "' is not a finite number.", column);
        }
        return value;
    }
}
