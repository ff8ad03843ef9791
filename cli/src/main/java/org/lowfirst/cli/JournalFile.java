package org.lowfirst.cli;

import java.nio.file.Path;

/** The file of the journal in a data directory. */
final class JournalFile {

    private JournalFile() {}

    static Path in(Path data) {
        return data.resolve("lowfirst.db");
    }
}
