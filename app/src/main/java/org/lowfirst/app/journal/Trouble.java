package org.lowfirst.app.journal;

import java.nio.file.Path;

/** Why the database cannot be used. One kind each, with a sentence for people in {@link #inWords()}. */
public sealed interface Trouble {

    /** What is wrong and what to do, one or two sentences. */
    String inWords();

    /** The file or its directory may not be written. */
    record ReadOnly(Path file) implements Trouble {
        @Override
        public String inWords() {
            return "The database " + file + " cannot be written. Give yourself write permission on the file and its"
                    + " directory, or name another directory with --data.";
        }
    }

    /** Another process holds the database. */
    record Locked(Path file) implements Trouble {
        @Override
        public String inWords() {
            return "The database " + file + " is in use by another process and stayed locked. Close the other program"
                    + " that has it open and try again; nothing was written.";
        }
    }

    /** Written by a later version of this program. */
    record NewerVersion(Path file, String found, String known) implements Trouble {
        @Override
        public String inWords() {
            return "The database " + file + " was written by a newer version (" + found + "; this program knows up to "
                    + known + "). Use that newer version; nothing was changed.";
        }
    }

    /** The file is something else. */
    record NotAJournal(Path file) implements Trouble {
        @Override
        public String inWords() {
            return "The file " + file + " is not a Lowfirst database. Name another directory with --data, or move the"
                    + " file away; nothing was changed.";
        }
    }

    /** The disk is full. */
    record DiskFull(Path file) implements Trouble {
        @Override
        public String inWords() {
            return "There is no room left on the disk for " + file + ". Free some space and send it again; nothing"
                    + " was written.";
        }
    }

    /** The file is a journal, but damaged, or the disk failed. */
    record Damaged(Path file, String detail) implements Trouble {
        @Override
        public String inWords() {
            return "The database " + file + " could not be read or written (" + detail + "). Copy the whole directory"
                    + " before anything else, then restore the latest backup.";
        }
    }
}
