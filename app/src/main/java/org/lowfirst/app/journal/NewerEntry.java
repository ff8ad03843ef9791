package org.lowfirst.app.journal;

/** An entry was written by a newer version of this program. Caught where the file is known. */
final class NewerEntry extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String found;
    private final String known;

    /**
     * @param found what the entry is, e.g. "fill.started version 3"
     * @param known the most this program knows, e.g. "fill.started version 1"
     */
    NewerEntry(String found, String known) {
        super(found);
        this.found = found;
        this.known = known;
    }

    String found() {
        return found;
    }

    String known() {
        return known;
    }
}
