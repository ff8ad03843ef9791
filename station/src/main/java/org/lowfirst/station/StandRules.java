package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/** What can be entered about how a supply stands. Every cylinder in the fact is known. */
final class StandRules {

    private StandRules() {}

    static @Nullable Refused check(StandFact fact) {
        if (fact instanceof StandFact.SupplyReleased) {
            return null;
        }
        throw new AssertionError("unhandled " + fact);
    }
}
