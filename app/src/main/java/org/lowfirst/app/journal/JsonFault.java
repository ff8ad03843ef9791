package org.lowfirst.app.journal;

/** A text is not JSON of the journal's kind. Caught where file and line are known. */
final class JsonFault extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int column;

    JsonFault(String what, int column) {
        super(what);
        this.column = column;
    }

    JsonFault(String what, int column, Throwable cause) {
        super(what, cause);
        this.column = column;
    }

    /** Where in the line, from 1; 0 when unknown. */
    int column() {
        return column;
    }
}
