package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/** What can be entered about equipment and readiness. Every cylinder in the fact is known. */
final class CareRules {

    private CareRules() {}

    static @Nullable Refused check(CareFact fact) {
        if (fact instanceof CareFact.UpkeepEnded f) {
            if (f.equipment().isBlank()) {
                return Refused.of(Rule.NAME_EMPTY, "equipment");
            }
            return f.reason().isBlank() ? Refused.of(Rule.REASON_EMPTY, f.equipment()) : null;
        }
        throw new AssertionError("unhandled " + fact);
    }
}
