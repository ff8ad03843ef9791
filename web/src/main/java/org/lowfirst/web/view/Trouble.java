package org.lowfirst.web.view;

import java.util.Locale;

/** What can go wrong with a whole request: each has a title, a sentence and what to do, in the words files. */
public enum Trouble {
    FOREIGN_HOST(403),
    FOREIGN_ORIGIN(403),
    STALE_FORM(403),
    NOT_UNDERSTOOD(400),
    NOT_FOUND(404),
    WRONG_METHOD(405),
    /** What is wrong is told by the database itself. */
    NO_DATABASE(503),
    FAILED(500);

    private final int status;

    Trouble(int status) {
        this.status = status;
    }

    /** HTTP status. */
    public int status() {
        return status;
    }

    String key() {
        return "trouble." + name().toLowerCase(Locale.ROOT);
    }
}
