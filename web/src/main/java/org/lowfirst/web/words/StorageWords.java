package org.lowfirst.web.words;

import org.lowfirst.app.journal.Trouble;

/** Why the database cannot be used, in the words of the screens. */
public final class StorageWords {

    private StorageWords() {}

    /** What is wrong and what to do, one or two sentences. */
    public static String of(Trouble trouble, Words words) {
        if (trouble instanceof Trouble.ReadOnly t) {
            return words.of("storage.read-only", t.file());
        } else if (trouble instanceof Trouble.Locked t) {
            return words.of("storage.locked", t.file());
        } else if (trouble instanceof Trouble.NewerVersion t) {
            return words.of("storage.newer-version", t.file(), t.found(), t.known());
        } else if (trouble instanceof Trouble.NotAJournal t) {
            return words.of("storage.not-a-journal", t.file());
        } else if (trouble instanceof Trouble.DiskFull t) {
            return words.of("storage.disk-full", t.file());
        } else if (trouble instanceof Trouble.Damaged t) {
            return words.of("storage.damaged", t.file(), t.detail());
        }
        throw new AssertionError("unhandled " + trouble);
    }
}
