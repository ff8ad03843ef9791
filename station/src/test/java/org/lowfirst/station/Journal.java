package org.lowfirst.station;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A journal in memory: facts one minute apart unless said otherwise. */
final class Journal {

    private final List<Entry> entries = new ArrayList<>();

    static Journal given(Fact... more) {
        Journal journal = new Journal();
        Larkmoor.facts().forEach(fact -> journal.add(fact, Larkmoor.TEN));
        Arrays.stream(more).forEach(journal::add);
        return journal;
    }

    Journal add(Fact fact) {
        return add(fact, Larkmoor.TEN.plusSeconds(60L * (entries.size() + 1)));
    }

    Journal add(Fact fact, Instant effectiveAt) {
        long seq = entries.size() + 1L;
        entries.add(new Entry(
                Larkmoor.BENCH,
                seq,
                new Origin(new EntryKey("key-" + seq), Larkmoor.TEN.plusSeconds(3600), effectiveAt, "Ida"),
                fact));
        return this;
    }

    List<Entry> entries() {
        return List.copyOf(entries);
    }

    Entry entry(long seq) {
        return entries.get((int) seq - 1);
    }

    Folding fold() {
        return Evolving.fold(Timeline.of(entries).iterator());
    }

    Bench bench() {
        if (fold() instanceof Folding.Folded folded) {
            return folded.bench();
        }
        throw new AssertionError(fold());
    }

    Decision when(Command command) {
        return when(command, false);
    }

    Decision when(Command command, boolean confirmed) {
        Instant now = Larkmoor.TEN.plusSeconds(7200);
        return Deciding.decide(bench(), command, new Circumstances(now, now, confirmed, "Ida", ZoneOffset.UTC));
    }
}
