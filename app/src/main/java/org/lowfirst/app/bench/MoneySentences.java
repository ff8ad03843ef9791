package org.lowfirst.app.bench;

import java.util.Map;
import org.lowfirst.station.MoneyFact;

/** Prices, who pays, and what the supplier takes, said in sentences. */
final class MoneySentences {

    private MoneySentences() {}

    static String of(MoneyFact fact, FactSentences names) {
        if (fact instanceof MoneyFact.FillBilled f) {
            return names.say(f.guest() ? "fill.billed.guest" : "fill.billed", Map.of("payer", f.payer()));
        }
        throw new AssertionError("unhandled " + fact);
    }
}
