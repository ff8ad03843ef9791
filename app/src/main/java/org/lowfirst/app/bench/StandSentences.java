package org.lowfirst.app.bench;

import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Delivery;
import org.lowfirst.station.StandFact;

/** How a supply stands in the bank, said in sentences. */
final class StandSentences {

    private final FactSentences names;

    private StandSentences(FactSentences names) {
        this.names = names;
    }

    static String of(StandFact fact, FactSentences names) {
        return new StandSentences(names).of(fact);
    }

    private String of(StandFact fact) {
        if (fact instanceof StandFact.SupplyReleased f) {
            return names.say("supply.released", Map.of("supply", names.name(f.supply())));
        } else if (fact instanceof StandFact.SupplyHeldBack f) {
            return names.say("supply.held-back", Map.of("supply", names.name(f.supply()), "reason", f.reason()));
        } else if (fact instanceof StandFact.SupplyTaggedOut f) {
            return names.say("supply.tagged-out", Map.of("supply", names.name(f.supply()), "reason", f.reason()));
        } else if (fact instanceof StandFact.SupplyPutFirst f) {
            return names.say("supply.put-first", Map.of("supply", names.name(f.supply())));
        } else if (fact instanceof StandFact.SupplyDelivered f) {
            return delivered(names.name(f.supply()), f.delivery());
        } else if (fact instanceof StandFact.SupplyPlaced f) {
            return banked("supply.placed", f.bank(), "supply", names.name(f.supply()));
        } else if (fact instanceof StandFact.BankChosen f) {
            return banked("fill.bank-chosen", f.bank(), "fill", f.fill().value());
        }
        return ofExchange(fact);
    }

    private String ofExchange(StandFact fact) {
        if (fact instanceof StandFact.ExchangeBegun f) {
            return names.say("exchange.begun", Map.of("supply", names.name(f.leaving())));
        } else if (fact instanceof StandFact.ExchangeMade f) {
            return names.say(
                    "exchange.made", Map.of("left", names.name(f.left()), "newcomer", names.name(f.newcomer())));
        } else if (fact instanceof StandFact.ExchangeBrokenOff f) {
            return names.say("exchange.broken-off", Map.of("supply", names.name(f.leaving()), "reason", f.reason()));
        }
        throw new AssertionError("unhandled " + fact);
    }

    private String delivered(String supply, Delivery delivery) {
        LocalDate rentFrom = delivery.rentFrom();
        return names.say(
                "supply.delivered",
                Map.of(
                        "supply", supply,
                        "supplier", said(delivery.supplier()),
                        "lot", said(delivery.lot()),
                        "rentFrom", said(rentFrom == null ? null : rentFrom.toString())));
    }

    private String banked(String key, @Nullable String bank, String name, String value) {
        return bank == null
                ? names.say(key + ".unnamed", Map.of(name, value))
                : names.say(key, Map.of(name, value, "bank", bank));
    }

    private String said(@Nullable String text) {
        return text == null ? names.say("unsaid", Map.of()) : text;
    }
}
