package org.lowfirst.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.lowfirst.app.journal.Importing;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.JournalImport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lowfirst journal import}. */
@Command(
        name = "import",
        description =
                "Reads journals that export wrote: all of them, or nothing when one line is wrong. A bench that is here"
                        + " already is continued when what is here is the beginning of what is read.")
final class ImportCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    private final JournalOptions options = new JournalOptions();

    @Option(names = "--dry-run", description = "Check everything, write nothing.")
    private boolean dryRun;

    @Parameters(paramLabel = "FILE", description = "File that export wrote; - reads what is piped in.")
    private String file = "";

    ImportCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (!file.equals("-") && !Files.isReadable(Path.of(file))) {
            terminal.err()
                    .println(
                            file + ": error: there is no such file, or it may not be read. Check its name and folder.");
            return ExitCode.BAD_INPUT;
        }
        return new OpenedJournal(terminal).existingOrNew(options.file(), this::read);
    }

    private int read(Journal journal) throws IOException {
        try (InputStream in = file.equals("-") ? terminal.in() : Files.newInputStream(Path.of(file));
                BufferedReader lines =
                        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()))) {
            Importing importing = JournalImport.read(journal, lines, dryRun);
            return importing instanceof Importing.Imported imported
                    ? done(imported)
                    : refused((Importing.BadLine) importing);
        } catch (MalformedInputException notText) {
            terminal.err().println(file + ": error: the file is not UTF-8 text; nothing was imported.");
            return ExitCode.BAD_INPUT;
        }
    }

    private int done(Importing.Imported imported) {
        imported.benches().forEach(bench -> terminal.out().println(bench.inWords()));
        if (imported.dryRun()) {
            terminal.out().println("Checked only, nothing was written.");
        }
        return ExitCode.DONE;
    }

    private int refused(Importing.BadLine bad) {
        terminal.err().print(BadLineReport.show(file.equals("-") ? "standard input" : file, bad));
        terminal.err().println("Nothing was imported.");
        return ExitCode.BAD_INPUT;
    }
}
