package org.lowfirst.station;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * The order in which entries count: by effective time, then by sequence. The opening of the bench comes first whatever its
 * time; a replacement stands in the place of the entry it corrects.
 */
public final class Timeline {

    private Timeline() {}

    /**
     * The entries that count, in the order they count. A correction appears as its replacement, under its own number; what was
     * corrected does not appear.
     *
     * @param entries all entries of one bench, in any order
     */
    public static List<Entry> of(Collection<Entry> entries) {
        Corrections corrections = Corrections.of(entries);
        Comparator<Entry> order = Comparator.comparing((Entry entry) -> corrections.place(entry.seq()) == 1 ? 0 : 1)
                .thenComparing(entry -> entry.origin().effectiveAt())
                .thenComparingLong(entry -> corrections.place(entry.seq()));
        return entries.stream()
                .filter(entry -> !corrections.struck(entry.seq()))
                .sorted(order)
                .flatMap(entry -> Corrections.counting(entry).stream())
                .toList();
    }
}
