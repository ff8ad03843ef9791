package org.lowfirst.app.journal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.lowfirst.station.BenchId;

/**
 * Writes journals as lines of canonical JSON, UTF-8, each ended by a line feed: for each bench a header with the number of its
 * entries and its head, then its entries in order. The same journals give the same bytes, wherever and whenever they are
 * written.
 */
public final class JournalExport {

    static final String FORMAT = "lowfirst-journal";
    static final long VERSION = 1;

    private JournalExport() {}

    /**
     * All benches of the database, by id.
     *
     * @throws IOException when the writer fails
     */
    public static void write(Journal journal, Writer out) throws IOException {
        List<BenchRow> benches = journal.listBenches().stream()
                .sorted(Comparator.comparing(bench -> bench.id().value()))
                .toList();
        for (BenchRow bench : benches) {
            write(journal, bench, out);
        }
    }

    /**
     * One bench; nothing when there is no such bench.
     *
     * @throws IOException when the writer fails
     */
    public static void write(Journal journal, BenchId bench, Writer out) throws IOException {
        for (BenchRow row : journal.listBenches()) {
            if (row.id().equals(bench)) {
                write(journal, row, out);
            }
        }
    }

    private static void write(Journal journal, BenchRow bench, Writer out) throws IOException {
        Head head = journal.head(bench.id());
        line(out, header(bench, head));
        try {
            journal.forEachBySeq(bench.id(), stored -> {
                if (stored.entry().seq() <= head.seq()) {
                    lineUnchecked(out, stored.toLine());
                }
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static String header(BenchRow bench, Head head) {
        return CanonicalJson.write(Map.of(
                "bench", bench.id().value(),
                "demo", bench.demo(),
                "entries", head.seq(),
                "format", FORMAT,
                "head", head.hash(),
                "version", VERSION));
    }

    private static void lineUnchecked(Writer out, String line) {
        try {
            line(out, line);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void line(Writer out, String line) throws IOException {
        out.write(line);
        out.write('\n');
    }
}
