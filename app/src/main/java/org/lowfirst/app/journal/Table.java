package org.lowfirst.app.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.ResultIterable;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.Query;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Corrections;
import org.lowfirst.station.Entry;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Origin;

/** The statements on the table. Those that change it run inside a transaction that holds the only write lock. */
final class Table {

    /** Sorts before every time. */
    private static final long FIRST_OF_ALL = Long.MIN_VALUE;

    private static final String INSERT = "INSERT INTO entry (" + Rows.COLUMNS + ", place_at, place, late) VALUES"
            + " (:bench, :seq, :key, :kind, :version, :recordedAt, :effectiveAt, :author, :payload, :previous, :hash,"
            + " :placeAt, :place, :late)";

    private Table() {}

    static Query select(Handle handle, String where, BenchId bench, long from) {
        return select(handle, Rows.COLUMNS, where, bench, from);
    }

    static Query select(Handle handle, String columns, String where, BenchId bench, long from) {
        return handle.createQuery("SELECT " + columns + " FROM entry WHERE " + where)
                .bind("bench", bench.value())
                .bind("from", from);
    }

    /** The corrections of a bench in order of their numbers. */
    static ResultIterable<Entry> corrections(Handle handle, BenchId bench) {
        String where = "bench = :bench AND kind = 'entry.corrected' AND seq >= :from ORDER BY seq";
        return select(handle, Rows.ENTRY_COLUMNS, where, bench, 0).map(Rows.ENTRY);
    }

    /** All entries of a bench in the order they count, corrected ones included. */
    static ResultIterable<Entry> inPlaceOrder(Handle handle, BenchId bench) {
        String where = "bench = :bench AND seq >= :from ORDER BY place_at, place, seq";
        return select(handle, Rows.ENTRY_COLUMNS, where, bench, 0).map(Rows.ENTRY);
    }

    static Head head(Handle handle, BenchId bench) {
        return handle.createQuery("SELECT seq, hash FROM entry WHERE bench = :bench ORDER BY seq DESC LIMIT 1")
                .bind("bench", bench.value())
                .map((row, context) -> new Head(row.getLong(1), row.getString(2)))
                .findFirst()
                .orElse(Head.NONE);
    }

    static List<StoredEntry> byKey(Handle handle, BenchId bench, EntryKey key) {
        List<StoredEntry> found = new ArrayList<>();
        Optional<StoredEntry> next = oneByKey(handle, bench, key);
        while (next.isPresent()) {
            found.add(next.get());
            next = oneByKey(handle, bench, following(key, found.size()));
        }
        return found;
    }

    /** Key of the entry at place {@code index} of those appended together, from 0. */
    static EntryKey following(EntryKey key, int index) {
        return index == 0 ? key : new EntryKey(key + "." + (index + 1));
    }

    private static Optional<StoredEntry> oneByKey(Handle handle, BenchId bench, EntryKey key) {
        return handle.createQuery("SELECT " + Rows.COLUMNS + " FROM entry WHERE bench = :bench AND entry_key = :key")
                .bind("bench", bench.value())
                .bind("key", key.value())
                .map(Rows.STORED)
                .findFirst();
    }

    static Appending append(Handle handle, BenchRow bench, Head expected, List<NewEntry> entries) {
        List<StoredEntry> before =
                byKey(handle, bench.id(), entries.get(0).origin().key());
        if (!before.isEmpty()) {
            return new Appending.Repeated(before);
        }
        Head head = head(handle, bench.id());
        if (!head.equals(expected)) {
            return new Appending.Overtaken(head);
        }
        List<PlacedEntry> sealed = new ArrayList<>(entries.size());
        for (NewEntry entry : entries) {
            sealed.add(seal(
                    bench.id(), head, entry, following(entries.get(0).origin().key(), sealed.size())));
            StoredEntry stored = sealed.get(sealed.size() - 1).stored();
            head = new Head(stored.entry().seq(), stored.hash());
        }
        insert(handle, bench, expected, sealed);
        return new Appending.Appended(sealed.stream().map(PlacedEntry::stored).toList());
    }

    private static PlacedEntry seal(BenchId bench, Head head, NewEntry entry, EntryKey key) {
        long seq = head.seq() + 1;
        Origin origin = entry.origin();
        Origin keyed = new Origin(key, origin.recordedAt(), origin.effectiveAt(), origin.author());
        StoredEntry stored = EntryText.seal(new Entry(bench, seq, keyed, entry.fact()), head.hash());
        return new PlacedEntry(stored, entry.place() == 0 ? seq : entry.place());
    }

    static boolean appendSealed(Handle handle, BenchRow bench, Head expected, List<PlacedEntry> entries) {
        if (!head(handle, bench.id()).equals(expected)) {
            return false;
        }
        insert(handle, bench, expected, entries);
        return true;
    }

    private static void insert(Handle handle, BenchRow bench, Head expected, List<PlacedEntry> entries) {
        if (expected.seq() == 0) {
            handle.createUpdate("INSERT INTO bench (id, demo) VALUES (:id, :demo)")
                    .bind("id", bench.id().value())
                    .bind("demo", bench.demo() ? 1 : 0)
                    .execute();
        }
        long latest = latestPlace(handle, bench.id());
        try (PreparedBatch batch = handle.prepareBatch(INSERT)) {
            for (PlacedEntry entry : entries) {
                long placeAt = placeAt(entry);
                boolean late = placeAt < latest
                        || entry.place() < entry.stored().entry().seq();
                latest = Math.max(latest, placeAt);
                bind(batch.bind("placeAt", placeAt).bind("late", late ? 1 : 0), entry);
            }
            batch.execute();
        }
    }

    private static long latestPlace(Handle handle, BenchId bench) {
        return handle.createQuery("SELECT coalesce(max(place_at), :none) FROM entry WHERE bench = :bench")
                .bind("none", FIRST_OF_ALL)
                .bind("bench", bench.value())
                .mapTo(Long.class)
                .one();
    }

    private static long placeAt(PlacedEntry placed) {
        Entry entry = placed.stored().entry();
        return entry.fact() instanceof Fact.BenchOpened
                ? FIRST_OF_ALL
                : entry.origin().effectiveAt().toEpochMilli();
    }

    /** Number of the first entry whose place columns are not what its content says; 0 when there is none. */
    static long firstMisplaced(Handle handle, BenchId bench) {
        long wrong = handle.createQuery("SELECT coalesce(min(seq), 0) FROM entry WHERE bench = :bench AND ("
                        + " CASE kind WHEN 'bench.opened' THEN :first ELSE effective_at END <> place_at"
                        + " OR (kind <> 'entry.corrected' AND place <> seq))")
                .bind("bench", bench.value())
                .bind("first", FIRST_OF_ALL)
                .mapTo(Long.class)
                .one();
        Corrections corrections = Corrections.of(corrections(handle, bench).list());
        return wrong != 0
                ? wrong
                : select(handle, "seq, place", "bench = :bench AND kind = 'entry.corrected' AND seq >= :from", bench, 0)
                        .map((row, context) -> row.getLong(2) == corrections.place(row.getLong(1)) ? 0 : row.getLong(1))
                        .filter(seq -> seq != 0)
                        .findFirst()
                        .orElse(0L);
    }

    private static void bind(PreparedBatch batch, PlacedEntry placed) {
        StoredEntry stored = placed.stored();
        Entry entry = stored.entry();
        Origin origin = entry.origin();
        batch.bind("bench", entry.bench().value())
                .bind("seq", entry.seq())
                .bind("key", origin.key().value())
                .bind("kind", stored.kind())
                .bind("version", stored.version())
                .bind("recordedAt", origin.recordedAt().toEpochMilli())
                .bind("effectiveAt", origin.effectiveAt().toEpochMilli())
                .bind("author", origin.author())
                .bind("payload", stored.payload())
                .bind("previous", stored.previous())
                .bind("hash", stored.hash())
                .bind("place", placed.place())
                .add();
    }

    static boolean removeDemo(Handle handle, BenchId bench) {
        boolean demo = handle.createQuery("SELECT count(*) FROM bench WHERE id = :id AND demo = 1")
                        .bind("id", bench.value())
                        .mapTo(Integer.class)
                        .one()
                > 0;
        if (demo) {
            handle.execute("DELETE FROM entry WHERE bench = ?", bench.value());
            handle.execute("DELETE FROM bench WHERE id = ?", bench.value());
        }
        return demo;
    }
}
