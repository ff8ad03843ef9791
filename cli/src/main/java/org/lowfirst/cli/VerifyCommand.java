package org.lowfirst.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.lowfirst.app.journal.BenchRow;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Verification;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code lowfirst journal verify}. */
@Command(
        name = "verify",
        description =
                "Checks every entry and the chain from the first entry to the head, bench by bench. Exit code 0 when all"
                        + " is whole, 1 when not.")
final class VerifyCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    private final JournalOptions options = new JournalOptions();

    VerifyCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        return new OpenedJournal(terminal).existing(options.file(), this::verify);
    }

    private int verify(Journal journal) {
        boolean whole = true;
        for (BenchRow bench : journal.listBenches()) {
            Verification verification = Verification.of(journal, bench.id());
            terminal.out().println(verification.inWords());
            whole &= verification instanceof Verification.Whole;
        }
        if (journal.listBenches().isEmpty()) {
            terminal.out().println("No bench yet: " + journal.file() + " has no entries.");
        }
        return whole ? ExitCode.DONE : ExitCode.FAILED;
    }
}
