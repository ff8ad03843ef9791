package org.lowfirst.gas.internal;

import java.io.Serial;

/** A substance file that does not say what it must say; the message has file, line, column, the line and a caret. */
public final class MalformedSubstanceFile extends IllegalArgumentException {

    @Serial
    private static final long serialVersionUID = 1L;

    MalformedSubstanceFile(String problem, String file, int line, int column, String text) {
        super(problem + "\n" + file + ":" + line + ":" + column + "\n" + text + "\n"
                + " ".repeat(Math.max(0, column - 1)) + "^");
    }
}
