package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/** What can be entered about how a supply stands. Every cylinder in the fact is known. */
final class StandRules {

    private StandRules() {}

    static @Nullable Refused check(StandFact fact) {
        if (fact instanceof StandFact.SupplyHeldBack f) {
            return reason(f.reason());
        } else if (fact instanceof StandFact.SupplyTaggedOut f) {
            return reason(f.reason());
        } else if (fact instanceof StandFact.ExchangeBrokenOff f) {
            return reason(f.reason());
        } else if (fact instanceof StandFact.SupplyPlaced f) {
            return f.bank() != null && f.bank().isBlank() ? Refused.of(Rule.NAME_EMPTY, "bank") : null;
        } else if (fact instanceof StandFact.ExchangeMade f) {
            return f.left().equals(f.newcomer())
                    ? Refused.of(Rule.SUPPLY_NAMED_TWICE, f.left().value())
                    : null;
        } else if (fact instanceof StandFact.SupplyReleased
                || fact instanceof StandFact.SupplyPutFirst
                || fact instanceof StandFact.SupplyDelivered
                || fact instanceof StandFact.BankChosen
                || fact instanceof StandFact.ExchangeBegun) {
            return null;
        }
        throw new AssertionError("unhandled " + fact);
    }

    private static @Nullable Refused reason(String reason) {
        return reason.isBlank() ? Refused.of(Rule.REASON_EMPTY, "") : null;
    }
}
