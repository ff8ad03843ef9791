package org.lowfirst.app.table;

import java.util.ArrayList;
import java.util.List;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Corrections;
import org.lowfirst.station.Entry;

/** The entries of a bench that count, corrections resolved, in the order they count. */
final class CountingEntries {

    private CountingEntries() {}

    static List<Entry> of(Journal journal, BenchId bench) {
        Corrections corrections = Corrections.of(journal.listCorrections(bench));
        return journal.inPlaceOrder(bench, entries -> {
            List<Entry> counting = new ArrayList<>();
            entries.forEachRemaining(entry -> {
                if (!corrections.struck(entry.seq())) {
                    Corrections.counting(entry).ifPresent(counting::add);
                }
            });
            return counting;
        });
    }
}
