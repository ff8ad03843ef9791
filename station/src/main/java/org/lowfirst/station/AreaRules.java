package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/** What can be entered in the areas of a bench. Every cylinder in the fact is known. */
final class AreaRules {

    private AreaRules() {}

    static @Nullable Refused check(Bench bench, AreaFact fact, Circumstances circumstances) {
        if (fact instanceof GateFact f) {
            return GateRules.check(bench, f, circumstances);
        } else if (fact instanceof CrewFact f) {
            return CrewRules.check(bench, f, circumstances);
        } else if (fact instanceof MoneyFact f) {
            return MoneyRules.check(bench, f, circumstances);
        } else if (fact instanceof CareFact f) {
            return CareRules.check(bench, f, circumstances);
        } else if (fact instanceof StandFact f) {
            return StandRules.check(f);
        } else if (fact instanceof SessionFact f) {
            return SessionRules.check(bench, f);
        } else if (fact instanceof OutlookFact f) {
            return OutlookRules.check(bench.areas().outlook(), f, circumstances);
        }
        throw new AssertionError("unhandled " + fact);
    }
}
