package org.lowfirst.station;

import java.util.LinkedHashSet;
import java.util.Set;

/**
 * How supplies stand in the bank beyond their rank. Immutable.
 *
 * @param released supplies that were released
 */
public record Stand(Set<SupplyId> released) {

    static final Stand NEW = new Stand(Set.of());

    public Stand {
        released = Set.copyOf(released);
    }

    Stand after(StandFact fact) {
        if (fact instanceof StandFact.SupplyReleased f) {
            Set<SupplyId> more = new LinkedHashSet<>(released);
            more.add(f.supply());
            return new Stand(more);
        }
        throw new AssertionError("unhandled " + fact);
    }
}
