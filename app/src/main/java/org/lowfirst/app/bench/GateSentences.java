package org.lowfirst.app.bench;

import java.util.Map;
import org.lowfirst.station.GateFact;

/** What decides whether a bottle may be filled, said in sentences. */
final class GateSentences {

    private GateSentences() {}

    static String of(GateFact fact, FactSentences names) {
        if (fact instanceof GateFact.RuleBookAdopted) {
            return names.say("rule-book.adopted", Map.of());
        }
        throw new AssertionError("unhandled " + fact);
    }
}
