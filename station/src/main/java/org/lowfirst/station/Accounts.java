package org.lowfirst.station;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Prices, who pays, and what the supplier takes. Immutable.
 *
 * @param billed fills that somebody else than the bottle's owner pays
 */
public record Accounts(Map<FillId, MoneyFact.FillBilled> billed) {

    static final Accounts NEW = new Accounts(Map.of());

    public Accounts {
        billed = Map.copyOf(billed);
    }

    Accounts after(MoneyFact fact) {
        if (fact instanceof MoneyFact.FillBilled f) {
            Map<FillId, MoneyFact.FillBilled> more = new LinkedHashMap<>(billed);
            more.put(f.fill(), f);
            return new Accounts(more);
        }
        throw new AssertionError("unhandled " + fact);
    }
}
