package org.lowfirst.app.journal;

import java.util.List;

/** What came of appending to a journal. */
public sealed interface Appending {

    /** The entries are in the journal, durably. */
    record Appended(List<StoredEntry> entries) implements Appending {

        public Appended {
            entries = List.copyOf(entries);
        }
    }

    /** They were in the journal already, under this key; nothing was added. */
    record Repeated(List<StoredEntry> entries) implements Appending {

        public Repeated {
            entries = List.copyOf(entries);
        }
    }

    /** Somebody else appended first; decide again on the new state. Nothing was added. */
    record Overtaken(Head head) implements Appending {}
}
