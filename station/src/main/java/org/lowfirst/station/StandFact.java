package org.lowfirst.station;

import java.util.List;

/** How a supply stands in the bank beyond its rank: held back, tagged out, used first, delivered with. */
public sealed interface StandFact extends AreaFact {

    /** A supply is used by its rank from now on, as any other. */
    record SupplyReleased(SupplyId supply) implements StandFact {
        @Override
        public List<CylinderId> cylinders() {
            return List.of(supply);
        }
    }
}
