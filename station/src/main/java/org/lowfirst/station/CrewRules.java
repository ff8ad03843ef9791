package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/** What can be entered about people. */
final class CrewRules {

    private CrewRules() {}

    static @Nullable Refused check(CrewFact fact) {
        if (fact instanceof CrewFact.PersonLeft f) {
            if (f.person().isBlank()) {
                return Refused.of(Rule.NAME_EMPTY, "person");
            }
            return f.reason().isBlank() ? Refused.of(Rule.REASON_EMPTY, f.person()) : null;
        }
        throw new AssertionError("unhandled " + fact);
    }
}
