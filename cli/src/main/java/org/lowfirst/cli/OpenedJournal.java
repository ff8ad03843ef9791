package org.lowfirst.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.JournalUnavailable;
import org.lowfirst.app.journal.Opening;

/** Opens a journal for one command and says in a sentence when it cannot be opened or fails. */
final class OpenedJournal {

    private final Terminal terminal;

    OpenedJournal(Terminal terminal) {
        this.terminal = terminal;
    }

    /** What a command does with the journal; answers with its exit code. */
    interface Work {

        int with(Journal journal) throws IOException;
    }

    /** For a journal that must be there. */
    int existing(Path file, Work work) throws IOException {
        if (!Files.exists(file)) {
            terminal.err()
                    .println("lowfirst: there is no journal at " + file
                            + ". Name its folder with --data, or start lowfirst" + " once to make one.");
            return ExitCode.BAD_INPUT;
        }
        return existingOrNew(file, work);
    }

    /** For a journal that is made when it is missing. */
    int existingOrNew(Path file, Work work) throws IOException {
        Opening opening = Journal.open(file);
        if (opening instanceof Opening.CannotOpen failed) {
            terminal.err().println("lowfirst: " + failed.trouble().inWords());
            return ExitCode.FAILED;
        }
        try (Journal journal = ((Opening.Opened) opening).journal()) {
            return work.with(journal);
        } catch (JournalUnavailable failed) {
            terminal.err().println("lowfirst: " + failed.trouble().inWords());
            return ExitCode.FAILED;
        }
    }
}
