package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/** What can be entered about money. */
final class MoneyRules {

    private MoneyRules() {}

    static @Nullable Refused check(MoneyFact fact) {
        if (fact instanceof MoneyFact.FillBilled f) {
            return f.payer().isBlank() ? Refused.of(Rule.NAME_EMPTY, "person") : null;
        }
        throw new AssertionError("unhandled " + fact);
    }
}
