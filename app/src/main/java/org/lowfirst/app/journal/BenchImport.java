package org.lowfirst.app.journal;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Corrections;
import org.lowfirst.station.Entry;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Evolving;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Folding;
import org.lowfirst.station.Origin;

/** One bench being imported: checks that every entry follows from the one before, and that the whole folds. */
final class BenchImport {

    private static final Set<String> MEMBERS = Set.of(
            "author",
            "bench",
            "effectiveAt",
            "hash",
            "key",
            "kind",
            "payload",
            "previous",
            "recordedAt",
            "seq",
            "version");

    private final Handle handle;
    private final BenchRow row;
    private final Head announced;
    private final Head here;
    private final Map<Long, Long> places;
    private final Set<Long> struck;
    private Head head = Head.NONE;

    private BenchImport(Handle handle, BenchRow row, Head announced) {
        this.handle = handle;
        this.row = row;
        this.announced = announced;
        this.here = Table.head(handle, row.id());
        this.places = new HashMap<>();
        this.struck = new HashSet<>();
    }

    /** @param header the first line of the bench */
    static BenchImport begin(Handle handle, Payload header) {
        if (!header.text("format").equals(JournalExport.FORMAT)) {
            throw new JsonFault("the format " + header.text("format") + " is not " + JournalExport.FORMAT, 0);
        }
        if (header.number("version") > JournalExport.VERSION) {
            throw new JsonFault(
                    "the file was written by a newer version (format " + header.number("version")
                            + "; this program knows up to " + JournalExport.VERSION + "); use that newer version",
                    0);
        }
        BenchRow row = new BenchRow(id(() -> new BenchId(header.text("bench"))), header.truth("demo"));
        return new BenchImport(handle, row, new Head(header.number("entries"), header.text("head")));
    }

    BenchRow row() {
        return row;
    }

    /** @return the entry when it is not here yet */
    @Nullable
    PlacedEntry next(Payload line) {
        StoredEntry stored = stored(line);
        Entry entry = stored.entry();
        if (!entry.bench().equals(row.id())) {
            throw new JsonFault("the entry is of " + entry.bench() + ", the header of " + row.id(), 0);
        } else if (entry.seq() != head.seq() + 1) {
            throw new JsonFault("entry " + (head.seq() + 1) + " was expected, not " + entry.seq(), 0);
        } else if (!stored.previous().equals(head.hash())) {
            throw JournalImport.atEntry(row.id(), entry.seq(), "does not follow from the entry before");
        } else if (!EntryText.hash(stored).equals(stored.hash())) {
            throw JournalImport.atEntry(row.id(), entry.seq(), "was changed after it was written: its hash differs");
        }
        long place = place(entry);
        head = new Head(entry.seq(), stored.hash());
        if (entry.seq() <= here.seq()) {
            checkSame(stored);
            return null;
        }
        return new PlacedEntry(stored, place);
    }

    private long place(Entry entry) {
        if (!(entry.fact() instanceof Fact.EntryCorrected correction)) {
            return entry.seq();
        }
        long corrected = correction.corrected();
        if (corrected < 1 || corrected >= entry.seq() || !struck.add(corrected)) {
            throw JournalImport.atEntry(
                    row.id(),
                    entry.seq(),
                    "corrects entry " + corrected + ", which is not there or was corrected before");
        }
        long place = places.getOrDefault(corrected, corrected);
        places.put(entry.seq(), place);
        return place;
    }

    private void checkSame(StoredEntry stored) {
        String known = handle.createQuery("SELECT hash FROM entry WHERE bench = :bench AND seq = :seq")
                .bind("bench", row.id().value())
                .bind("seq", stored.entry().seq())
                .mapTo(String.class)
                .one();
        if (!known.equals(stored.hash())) {
            throw JournalImport.atEntry(
                    row.id(),
                    stored.entry().seq(),
                    "is not the one that is here; the two journals went different ways and cannot be joined");
        }
    }

    /** After the last entry and after everything was inserted. */
    Importing.OfBench end(Handle in) {
        if (!head.equals(announced)) {
            throw new JsonFault(
                    "the journal of " + row.id() + " ends at entry " + head.seq() + "; the header announced "
                            + announced.seq() + " entries and another head",
                    0);
        }
        if (fold(in) instanceof Folding.Broken broken) {
            throw JournalImport.atEntry(
                    row.id(),
                    broken.entry().seq(),
                    "does not fit what went before (" + broken.why().rule() + ")");
        }
        Head after = Table.head(in, row.id());
        long known = Math.min(here.seq(), head.seq());
        return new Importing.OfBench(row.id(), head.seq() - known, known, after);
    }

    private Folding fold(Handle in) {
        List<Entry> correcting = Table.corrections(in, row.id()).list();
        Corrections corrections = Corrections.of(correcting);
        return Table.inPlaceOrder(in, row.id())
                .withStream(entries -> Evolving.fold(entries.filter(entry -> !corrections.struck(entry.seq()))
                        .flatMap(entry -> Corrections.counting(entry).stream())
                        .iterator()));
    }

    private static StoredEntry stored(Payload line) {
        for (String name : line.members().keySet()) {
            if (!MEMBERS.contains(name)) {
                throw new JsonFault("the member " + name + " is not known", 0);
            }
        }
        String kind = line.text("kind");
        int version = (int) line.number("version");
        Payload payload = line.part("payload", part -> part);
        Origin origin = new Origin(
                id(() -> new EntryKey(line.text("key"))),
                Parts.instant(line.text("recordedAt")),
                Parts.instant(line.text("effectiveAt")),
                line.text("author"));
        Fact fact = decode(kind, version, payload);
        Entry entry = new Entry(id(() -> new BenchId(line.text("bench"))), line.number("seq"), origin, fact);
        return new StoredEntry(
                entry, kind, version, CanonicalJson.write(payload.members()), line.text("previous"), line.text("hash"));
    }

    private static Fact decode(String kind, int version, Payload payload) {
        try {
            return FactCodecs.decode(kind, version, payload.members());
        } catch (NewerEntry e) {
            throw new JsonFault(
                    "the file was written by a newer version (" + e.found() + "; this program knows up to " + e.known()
                            + "); use that newer version",
                    0,
                    e);
        }
    }

    private static <T> T id(Supplier<T> make) {
        try {
            return make.get();
        } catch (IllegalArgumentException e) {
            throw new JsonFault(String.valueOf(e.getMessage()), 0, e);
        }
    }
}
