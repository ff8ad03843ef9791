package org.lowfirst.station;

import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Equipment that is looked after, groups of bottles kept ready, local numbers. Immutable.
 *
 * @param ended names of equipment no longer looked after
 */
public record Care(Set<String> ended) {

    static final Care NEW = new Care(Set.of());

    public Care {
        ended = Set.copyOf(ended);
    }

    Care after(CareFact fact) {
        if (fact instanceof CareFact.UpkeepEnded f) {
            Set<String> more = new LinkedHashSet<>(ended);
            more.add(f.equipment());
            return new Care(more);
        }
        throw new AssertionError("unhandled " + fact);
    }
}
