package org.lowfirst.app.bench;

import java.time.Instant;
import java.util.Comparator;
import org.lowfirst.station.Corrections;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;

/**
 * Where an entry stands in the order in which entries count, see {@link org.lowfirst.station.Timeline}.
 *
 * @param number of the entry whose place it takes
 */
record Place(Instant at, long number) implements Comparable<Place> {

    private static final Comparator<Place> ORDER =
            Comparator.comparing(Place::at).thenComparingLong(Place::number);

    static Place of(Entry entry, Corrections corrections) {
        return of(entry, corrections.place(entry.seq()));
    }

    static Place of(Entry entry, long number) {
        boolean opening = entry.fact() instanceof Fact.BenchOpened;
        return new Place(opening ? Instant.MIN : entry.origin().effectiveAt(), number);
    }

    @Override
    public int compareTo(Place other) {
        return ORDER.compare(this, other);
    }
}
