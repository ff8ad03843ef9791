package org.lowfirst.app.journal;

/** The database failed while a journal was read or written; a transaction under way was undone. */
public final class JournalUnavailable extends RuntimeException {

    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // never serialised; the values are records of text and paths
    private final Trouble trouble;

    JournalUnavailable(Trouble trouble, Throwable cause) {
        super(trouble.inWords(), cause);
        this.trouble = trouble;
    }

    JournalUnavailable(Trouble trouble) {
        super(trouble.inWords());
        this.trouble = trouble;
    }

    public Trouble trouble() {
        return trouble;
    }
}
