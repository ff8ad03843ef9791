package org.lowfirst.station;

import org.jspecify.annotations.Nullable;
import org.lowfirst.station.rules.RuleBookReading;
import org.lowfirst.station.rules.RuleBookText;

/** What can be entered about the gate. Every cylinder in the fact is known. */
final class GateRules {

    private GateRules() {}

    static @Nullable Refused check(GateFact fact) {
        if (fact instanceof GateFact.RuleBookAdopted f) {
            return RuleBookText.read("rule book", f.text()) instanceof RuleBookReading.Malformed malformed
                    ? Refused.of(Rule.RULE_BOOK_MALFORMED, malformed.message())
                    : null;
        }
        throw new AssertionError("unhandled " + fact);
    }
}
