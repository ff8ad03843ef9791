package org.lowfirst.app.bench;

import java.util.Map;
import org.lowfirst.station.StandFact;

/** How a supply stands in the bank, said in sentences. */
final class StandSentences {

    private StandSentences() {}

    static String of(StandFact fact, FactSentences names) {
        if (fact instanceof StandFact.SupplyReleased f) {
            return names.say("supply.released", Map.of("supply", names.name(f.supply())));
        }
        throw new AssertionError("unhandled " + fact);
    }
}
