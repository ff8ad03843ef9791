package org.lowfirst.app.journal;

/** What came of opening a database. */
public sealed interface Opening {

    /** @param journal to be closed by whoever opened it */
    record Opened(Journal journal) implements Opening {}

    record CannotOpen(Trouble trouble) implements Opening {}
}
