package org.lowfirst.app.journal;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.EntryKey;

/**
 * The journals of all benches in one database. An append is durable when it returns. Thread-safe.
 *
 * <p>Every method throws {@link JournalUnavailable} when the database fails.
 */
public final class Journal implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final Path file;
    private final HikariDataSource pool;
    private final Jdbi jdbi;
    private final Object writing = new Object();

    Journal(Path file, HikariDataSource pool) {
        this.file = file;
        this.pool = pool;
        this.jdbi = Jdbi.create(pool);
    }

    /** Opens the database, made when it is missing. */
    public static Opening open(Path file) {
        return open(file, PATIENCE);
    }

    static Opening open(Path file, Duration patience) {
        return SqliteFile.open(file, patience);
    }

    public Path file() {
        return file;
    }

    /** In order of opening. */
    public List<BenchRow> listBenches() {
        return read(handle -> handle.createQuery("SELECT id, demo FROM bench ORDER BY rowid")
                .map((row, context) -> new BenchRow(new BenchId(row.getString(1)), row.getInt(2) != 0))
                .list());
    }

    /** {@link Head#NONE} when the bench has no entries. */
    public Head head(BenchId bench) {
        return read(handle -> Table.head(handle, bench));
    }

    public Optional<StoredEntry> findEntry(BenchId bench, long seq) {
        return read(handle -> Table.select(handle, "bench = :bench AND seq = :from", bench, seq)
                .map(Rows.STORED)
                .findFirst());
    }

    /** What was appended under a key, first entry first; empty when nothing was. */
    public List<StoredEntry> listByKey(BenchId bench, EntryKey key) {
        return read(handle -> Table.byKey(handle, bench, key));
    }

    /** Entries in order of their numbers, from {@code first} on. */
    public List<StoredEntry> listFrom(BenchId bench, long first) {
        return read(handle -> Table.select(handle, "bench = :bench AND seq >= :from ORDER BY seq", bench, first)
                .map(Rows.STORED)
                .list());
    }

    /** The entries before a number, the nearest first. */
    public List<StoredEntry> listBefore(BenchId bench, long seq, int limit) {
        return read(handle -> handle.createQuery("SELECT " + Rows.COLUMNS
                        + " FROM entry WHERE bench = :bench AND seq < :seq ORDER BY seq DESC LIMIT :limit")
                .bind("bench", bench.value())
                .bind("seq", seq)
                .bind("limit", limit)
                .map(Rows.STORED)
                .list());
    }

    /** Entries by the time they count from, newest first. */
    public List<StoredEntry> listNewest(BenchId bench, int skip, int limit) {
        return read(handle -> handle.createQuery("SELECT " + Rows.COLUMNS
                        + " FROM entry WHERE bench = :bench ORDER BY place_at DESC, place DESC, seq DESC"
                        + " LIMIT :limit OFFSET :skip")
                .bind("bench", bench.value())
                .bind("limit", limit)
                .bind("skip", skip)
                .map(Rows.STORED)
                .list());
    }

    /** The entries of one kind in order of their numbers. */
    public List<StoredEntry> listOfKind(BenchId bench, String kind) {
        return read(handle -> Table.select(
                        handle, "bench = :bench AND kind = :kind AND seq >= :from ORDER BY seq", bench, 0)
                .bind("kind", kind)
                .map(Rows.STORED)
                .list());
    }

    /** The corrections of a bench in order of their numbers. */
    public List<Entry> listCorrections(BenchId bench) {
        return read(handle -> Table.corrections(handle, bench).list());
    }

    /**
     * Entries that came late: recorded after {@code entry}, yet they count before it.
     *
     * @param entry an entry of the journal
     */
    public List<Entry> listLaterRecordedBefore(Entry entry) {
        return read(handle -> Table.select(
                        handle,
                        Rows.ENTRY_COLUMNS,
                        "bench = :bench AND late = 1 AND seq > :from AND place_at < :at ORDER BY seq",
                        entry.bench(),
                        entry.seq())
                .bind("at", entry.origin().effectiveAt().toEpochMilli())
                .map(Rows.ENTRY)
                .list());
    }

    /** Shows every entry in order of number, one at a time. */
    public void forEachBySeq(BenchId bench, Consumer<StoredEntry> action) {
        read(handle -> {
            Table.select(handle, "bench = :bench AND seq >= :from ORDER BY seq", bench, 0)
                    .map(Rows.STORED)
                    .useIterator(rows -> rows.forEachRemaining(action));
            return true;
        });
    }

    /**
     * Reads all entries in the order they count, corrected ones included (see {@link org.lowfirst.station.Timeline}).
     *
     * @param fold what to make of them; the iterator lives only during this call
     */
    public <T> T inPlaceOrder(BenchId bench, Function<Iterator<Entry>, T> fold) {
        return read(handle -> Table.inPlaceOrder(handle, bench).withIterator(fold::apply));
    }

    /**
     * Appends entries, all or none; durable when it returns. The first entries of a bench open its journal.
     *
     * @param expected the head they were decided on
     * @param entries at least one; the key of the first one is that of the whole
     */
    public Appending append(BenchId bench, Head expected, List<NewEntry> entries) {
        return append(new BenchRow(bench, false), expected, entries);
    }

    /** As {@link #append(BenchId, Head, List)}, for a bench that may be a demo. */
    public Appending append(BenchRow bench, Head expected, List<NewEntry> entries) {
        synchronized (writing) {
            return write(handle -> Table.append(handle, bench, expected, entries));
        }
    }

    /** Runs an import as one transaction; the work rolls it back when nothing is to be kept. */
    Importing importing(Function<Handle, Importing> work) {
        synchronized (writing) {
            return write(work);
        }
    }

    /**
     * Removes a demo bench with its whole journal.
     *
     * @return false when there is no such bench or it is not a demo
     */
    public boolean removeDemo(BenchId bench) {
        synchronized (writing) {
            return write(handle -> Table.removeDemo(handle, bench));
        }
    }

    /** Writes a consistent copy of the database to a file that is not there yet. */
    void copyTo(Path copy) {
        read(handle -> handle.execute("VACUUM INTO ?", copy.toString()));
    }

    /** For whoever folds the entries and finds that they make no sense. */
    public JournalUnavailable damaged(String detail) {
        return new JournalUnavailable(new Trouble.Damaged(file, detail));
    }

    <T> T read(Function<Handle, T> work) {
        try {
            return jdbi.withHandle(work::apply);
        } catch (JdbiException | JsonFault | NewerEntry e) {
            throw new JournalUnavailable(Troubles.of(file, e), e);
        }
    }

    private <T> T write(Function<Handle, T> work) {
        try {
            return jdbi.inTransaction(work::apply);
        } catch (JdbiException | JsonFault | NewerEntry e) {
            throw new JournalUnavailable(Troubles.of(file, e), e);
        }
    }

    @Override
    public void close() {
        pool.close();
    }
}
