package org.lowfirst.app.journal;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/**
 * A copy of the whole database, made while it is in use, checked before it gets its name.
 *
 * @param file the copy
 * @param journals what it holds, bench by bench: how many entries and the head
 */
public record Backup(Path file, List<Verification> journals) {

    public Backup {
        journals = List.copyOf(journals);
    }

    /** Whether every chain in the copy is whole. */
    public boolean whole() {
        return journals.stream().allMatch(Verification.Whole.class::isInstance);
    }

    /**
     * Makes a backup.
     *
     * @param file where to; must not be there yet
     * @throws FileAlreadyExistsException when it is there
     * @throws IOException when the copy cannot be written
     * @throws JournalUnavailable when the database fails
     */
    public static Backup of(Journal journal, Path file) throws IOException {
        if (Files.exists(file)) {
            throw new FileAlreadyExistsException(file.toString());
        }
        Path unfinished = file.resolveSibling(file.getFileName() + ".unfinished");
        Files.deleteIfExists(unfinished);
        journal.copyTo(unfinished);
        List<Verification> journals = verify(unfinished);
        Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
        return new Backup(file, journals);
    }

    private static List<Verification> verify(Path copy) throws IOException {
        if (!(Journal.open(copy) instanceof Opening.Opened opened)) {
            throw new IOException("The copy " + copy + " does not open.");
        }
        List<Verification> journals = new ArrayList<>();
        try (Journal copied = opened.journal()) {
            for (BenchRow bench : copied.listBenches()) {
                journals.add(Verification.of(copied, bench.id()));
            }
        }
        return journals;
    }
}
