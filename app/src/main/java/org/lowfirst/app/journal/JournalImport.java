package org.lowfirst.app.journal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.BenchId;

/**
 * Reads journals that {@link JournalExport} wrote, all or nothing. A bench that is here already is continued, if what is here
 * is the beginning of what is read. Every hash, every link of the chain and every fold is checked. Used once.
 */
public final class JournalImport {

    private static final int BATCH = 1_000;

    private final Handle handle;
    private final List<Importing.OfBench> done = new ArrayList<>();
    private final List<PlacedEntry> waiting = new ArrayList<>();
    private @Nullable BenchImport current;
    private int number;

    private JournalImport(Handle handle) {
        this.handle = handle;
    }

    /**
     * @param dryRun true to check everything and write nothing
     * @throws IOException when the reader fails
     * @throws JournalUnavailable when the database fails; then nothing was written
     */
    public static Importing read(Journal journal, BufferedReader lines, boolean dryRun) throws IOException {
        try {
            return journal.importing(handle -> {
                Importing importing = new JournalImport(handle).all(lines, dryRun);
                if (dryRun || importing instanceof Importing.BadLine) {
                    handle.rollback();
                }
                return importing;
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private Importing all(BufferedReader lines, boolean dryRun) {
        String text = "";
        try {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                number++;
                text = line;
                take(new Payload(JsonText.parseObject(line)));
            }
            number++;
            text = "";
            finish();
            if (done.isEmpty()) {
                throw new JsonFault("the file is empty; give one that journal export wrote", 0);
            }
        } catch (JsonFault e) {
            return new Importing.BadLine(number, e.column(), String.valueOf(e.getMessage()), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Importing.Imported(done, dryRun);
    }

    private void take(Payload line) {
        if (line.textOrNull("format") != null) {
            finish();
            current = BenchImport.begin(handle, line);
            return;
        }
        BenchImport bench = current;
        if (bench == null) {
            throw new JsonFault("the header of a bench was expected; give a file that journal export wrote", 0);
        }
        PlacedEntry added = bench.next(line);
        if (added != null) {
            waiting.add(added);
        }
        if (waiting.size() >= BATCH) {
            insert(bench);
        }
    }

    private void finish() {
        BenchImport bench = current;
        if (bench != null) {
            insert(bench);
            done.add(bench.end(handle));
        }
    }

    private void insert(BenchImport bench) {
        if (!waiting.isEmpty()) {
            Head before = new Head(
                    waiting.get(0).stored().entry().seq() - 1,
                    waiting.get(0).stored().previous());
            if (!Table.appendSealed(handle, bench.row(), before, waiting)) {
                throw new JsonFault("the journal of " + bench.row().id() + " grew meanwhile; try again", 0);
            }
            waiting.clear();
        }
    }

    /** For messages. */
    static JsonFault atEntry(BenchId bench, long seq, String what) {
        return new JsonFault("entry " + seq + " of " + bench + " " + what, 0);
    }
}
