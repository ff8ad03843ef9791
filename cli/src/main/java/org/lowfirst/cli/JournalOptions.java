package org.lowfirst.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which journal a command is about. */
final class JournalOptions {

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "Folder of the journal. Left out: the folder your system keeps for a user's data.")
    private @Nullable Path data;

    /** The file; it need not be there. */
    Path file() {
        return JournalFile.in(data == null ? DataDirectory.ofThisUser() : data);
    }
}
