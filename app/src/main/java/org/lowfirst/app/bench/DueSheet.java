package org.lowfirst.app.bench;

import java.time.LocalDate;
import java.util.List;
import org.lowfirst.station.due.DueList;

/**
 * What falls due at a bench.
 *
 * @param today day at the bench
 * @param list everything with a last good day
 * @param unmarked names of bottles in use of which no marking was entered, so that nothing is known of their tests
 * @param undated names of bottles in use that are marked, but of which no day follows
 */
public record DueSheet(LocalDate today, DueList list, List<String> unmarked, List<String> undated) {

    public DueSheet {
        unmarked = List.copyOf(unmarked);
        undated = List.copyOf(undated);
    }
}
