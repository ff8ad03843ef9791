package org.lowfirst.app.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.journal.Head;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Corrections;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Evolving;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Folding;

/**
 * Folds a whole journal, entry by entry in the order they count, with a supposed entry slipped in when there is one. Used once.
 */
final class Replay implements Iterator<Entry> {

    private final Corrections corrections;
    private final Iterator<Entry> stored;
    private final BookKeeper keeper;
    private @Nullable Entry supposed;
    private @Nullable Entry waiting;
    private @Nullable Entry next;
    private Place last = new Place(Instant.MIN, 0);

    private Replay(Corrections corrections, Iterator<Entry> stored, BookKeeper keeper, @Nullable Entry supposed) {
        this.corrections = corrections;
        this.stored = stored;
        this.keeper = keeper;
        this.supposed = supposed;
        advance();
    }

    /** The bench as its journal stands. */
    static Replayed of(Journal journal, BenchId bench, GasCount count) {
        return run(journal, bench, journal.head(bench), count, null);
    }

    /** The bench as it would be with one more entry after the head. */
    static Replayed with(Journal journal, Head head, Entry supposed, GasCount count) {
        return run(journal, supposed.bench(), head, count, supposed);
    }

    /**
     * The bench as it was when something happened, as far as is known at this head; empty before it was opened.
     *
     * @param with whether what happened itself counts
     */
    static Optional<BenchState> upTo(Journal journal, Head head, Entry entry, boolean with, GasCount count) {
        Corrections corrections = Corrections.of(journal.listCorrections(entry.bench()));
        Place place = Place.of(entry, corrections);
        Predicate<Entry> earlier = other -> {
            int order = Place.of(other, corrections).compareTo(place);
            return other.seq() <= head.seq() && (order < 0 || (with && order == 0));
        };
        return run(journal, entry.bench(), head, count, null, earlier) instanceof Replayed.State folded
                ? Optional.of(folded.state())
                : Optional.empty();
    }

    private static Replayed run(Journal journal, BenchId bench, Head head, GasCount count, @Nullable Entry supposed) {
        return run(journal, bench, head, count, supposed, entry -> entry.seq() <= head.seq());
    }

    private static Replayed run(
            Journal journal,
            BenchId bench,
            Head head,
            GasCount count,
            @Nullable Entry supposed,
            Predicate<Entry> counts) {
        List<Entry> correcting = new ArrayList<>(journal.listCorrections(bench));
        correcting.removeIf(entry -> entry.seq() > head.seq());
        if (supposed != null && supposed.fact() instanceof Fact.EntryCorrected) {
            correcting.add(supposed);
        }
        Corrections corrections = Corrections.of(correcting);
        BookKeeper keeper = new BookKeeper(count);
        return journal.inPlaceOrder(bench, rows -> {
            Replay replay = new Replay(corrections, only(counts, rows), keeper, supposed);
            Folding folding = Evolving.fold(replay);
            if (folding instanceof Folding.Folded folded) {
                BenchState state = new BenchState(folded.bench(), keeper.toBook(), head, replay.last);
                return new Replayed.State(state, keeper);
            } else if (folding instanceof Folding.Broken broken) {
                return new Replayed.Broken(broken.entry(), broken.why());
            }
            return new Replayed.Nothing();
        });
    }

    /** The state after one more entry that counts last. */
    static BenchState following(BenchState state, Entry entry, Head head, BookKeeper keeper) {
        Bench bench = Evolving.evolve(state.bench(), entry);
        keeper.enter(entry);
        return new BenchState(bench, keeper.toBook(), head, Place.of(entry, entry.seq()));
    }

    /** Leaves out what does not count, such as what was appended while this read was under way. */
    private static Iterator<Entry> only(Predicate<Entry> counts, Iterator<Entry> rows) {
        Iterable<Entry> once = () -> rows;
        return StreamSupport.stream(once.spliterator(), false).filter(counts).iterator();
    }

    @Override
    public boolean hasNext() {
        return next != null;
    }

    @Override
    public Entry next() {
        Entry entry = next;
        if (entry == null) {
            throw new NoSuchElementException();
        }
        last = Place.of(entry, corrections);
        keeper.enter(entry);
        advance();
        return entry;
    }

    /** Looks for the next entry that counts. */
    private void advance() {
        next = null;
        Entry candidate = take();
        while (candidate != null && next == null) {
            if (!corrections.struck(candidate.seq())) {
                next = Corrections.counting(candidate).orElse(null);
            }
            candidate = next == null ? take() : candidate;
        }
    }

    private @Nullable Entry take() {
        if (waiting == null && stored.hasNext()) {
            waiting = stored.next();
        }
        boolean supposedFirst = supposed != null
                && (waiting == null || Place.of(supposed, corrections).compareTo(Place.of(waiting, corrections)) < 0);
        Entry taken = supposedFirst ? supposed : waiting;
        if (supposedFirst) {
            supposed = null;
        } else {
            waiting = null;
        }
        return taken;
    }
}
