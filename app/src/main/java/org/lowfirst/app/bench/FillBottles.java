package org.lowfirst.app.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.StoredEntry;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Fact;
import org.lowfirst.station.FillId;

/**
 * Which bottle the fills are of that some entries end. A fill that has ended is no longer in the state of the bench, so its
 * beginning is looked for in the entries and in those before them, which is seldom far.
 */
final class FillBottles {

    private static final int FIRST_LOOK = 64;

    /** A fill begun so many entries before its end stays without a name. */
    private static final int FARTHEST = 4_000;

    private final Map<FillId, BottleId> found = new HashMap<>();
    private final Set<FillId> wanted = new HashSet<>();

    private FillBottles() {}

    static Map<FillId, BottleId> of(Journal journal, BenchId bench, List<StoredEntry> entries) {
        FillBottles bottles = new FillBottles();
        bottles.take(entries);
        long before =
                entries.stream().mapToLong(stored -> stored.entry().seq()).min().orElse(1);
        int limit = FIRST_LOOK;
        while (!bottles.wanted.isEmpty() && before > 1 && limit <= FARTHEST) {
            List<StoredEntry> earlier = new ArrayList<>(journal.listBefore(bench, before, limit));
            bottles.look(earlier);
            before -= limit;
            limit *= 4;
        }
        return Map.copyOf(bottles.found);
    }

    private void take(List<StoredEntry> entries) {
        for (StoredEntry stored : entries) {
            Fact fact = told(stored.entry().fact());
            if (fact instanceof Fact.FillFinished f) {
                wanted.add(f.fill());
            } else if (fact instanceof Fact.FillAbandoned f) {
                wanted.add(f.fill());
            }
        }
        look(entries);
    }

    private void look(List<StoredEntry> entries) {
        for (StoredEntry stored : entries) {
            if (told(stored.entry().fact()) instanceof Fact.FillStarted f && wanted.remove(f.fill())) {
                found.put(f.fill(), f.bottle());
            }
        }
    }

    private static @Nullable Fact told(Fact fact) {
        return fact instanceof Fact.EntryCorrected corrected ? corrected.replacement() : fact;
    }
}
