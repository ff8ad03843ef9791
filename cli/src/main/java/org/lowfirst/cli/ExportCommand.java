package org.lowfirst.cli;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.JournalExport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code lowfirst journal export}. */
@Command(
        name = "export",
        description = "Writes the journals of all benches as lines of JSON; the same journals give the same bytes.")
final class ExportCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    private final JournalOptions options = new JournalOptions();

    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            defaultValue = "-",
            description = "File to write, not there yet; - or nothing writes to standard output.")
    private String file = "-";

    ExportCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        return new OpenedJournal(terminal).existing(options.file(), this::export);
    }

    private int export(Journal journal) throws IOException {
        if (file.equals("-")) {
            JournalExport.write(journal, terminal.out());
            return ExitCode.DONE;
        }
        Path target = Path.of(file);
        if (Files.exists(target)) {
            terminal.err().println("lowfirst: " + file + " is there already and was left as it is. Name another file.");
            return ExitCode.BAD_INPUT;
        }
        try {
            writeWhole(journal, target);
        } catch (IOException failed) {
            terminal.err()
                    .println("lowfirst: " + file + " could not be written (" + reason(failed)
                            + "). Check the folder, its permissions and the room on the disk.");
            return ExitCode.FAILED;
        }
        terminal.err().println("Exported to " + file + ".");
        return ExitCode.DONE;
    }

    /** Under another name first, so that a file with the right name is always whole. */
    private static void writeWhole(Journal journal, Path target) throws IOException {
        Path unfinished = target.resolveSibling(target.getFileName() + ".unfinished");
        try (Writer out = Files.newBufferedWriter(
                unfinished, StandardCharsets.UTF_8, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING)) {
            JournalExport.write(journal, out);
        }
        Files.move(unfinished, target, StandardCopyOption.ATOMIC_MOVE);
    }

    private static String reason(IOException failed) {
        return failed instanceof FileAlreadyExistsException || failed.getMessage() == null
                ? failed.getClass().getSimpleName()
                : failed.getMessage();
    }
}
