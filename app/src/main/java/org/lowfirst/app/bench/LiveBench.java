package org.lowfirst.app.bench;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.journal.Head;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;

/** One bench kept folded, following its journal whoever appends to it. Thread-safe. */
final class LiveBench {

    private final Journal journal;
    private final BenchId id;
    private final GasCount count;
    private @Nullable BenchState state;
    private BookKeeper keeper;

    LiveBench(Journal journal, BenchId id, GasCount count) {
        this.journal = journal;
        this.id = id;
        this.count = count;
        this.keeper = new BookKeeper(count);
    }

    /** The bench now; empty when its journal has no entries. */
    synchronized Optional<BenchState> findState() {
        Head head = journal.head(id);
        BenchState known = state;
        if (known == null || head.seq() < known.head().seq()) {
            return fold();
        }
        if (head.seq() == known.head().seq()) {
            return head.equals(known.head()) ? Optional.of(known) : fold();
        }
        for (StoredEntry stored : journal.listFrom(id, known.head().seq() + 1)) {
            Entry entry = stored.entry();
            boolean late = Place.of(entry, entry.seq()).compareTo(known.last()) < 0;
            if (late || entry.fact() instanceof Fact.EntryCorrected) {
                return fold();
            }
            known = Replay.following(known, entry, new Head(entry.seq(), stored.hash()), keeper);
            state = known;
        }
        return Optional.of(known);
    }

    private Optional<BenchState> fold() {
        Replayed replayed = Replay.of(journal, id, count);
        if (replayed instanceof Replayed.Broken broken) {
            throw journal.damaged(
                    "entry " + broken.entry().seq() + " of bench " + id + " does not fit what went before: "
                            + broken.why().rule() + " " + broken.why().subject());
        }
        if (replayed instanceof Replayed.State folded) {
            state = folded.state();
            keeper = folded.keeper();
        } else {
            state = null;
        }
        return Optional.ofNullable(state);
    }
}
