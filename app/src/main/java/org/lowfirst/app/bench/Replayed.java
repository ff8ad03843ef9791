package org.lowfirst.app.bench;

import org.lowfirst.station.Entry;
import org.lowfirst.station.Refused;

/** What came of folding a whole journal. */
sealed interface Replayed {

    /** @param keeper the book-keeper, to go on with */
    record State(BenchState state, BookKeeper keeper) implements Replayed {}

    /** There is no such bench. */
    record Nothing() implements Replayed {}

    /** An entry does not fit what goes before it. */
    record Broken(Entry entry, Refused why) implements Replayed {}
}
