package org.lowfirst.app.bench;

import java.util.Locale;
import java.util.Map;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.StatedCost;
import org.lowfirst.station.StatedTariff;

/** Prices, who pays, and what the supplier takes, said in sentences. */
final class MoneySentences {

    private MoneySentences() {}

    static String of(MoneyFact fact, FactSentences names) {
        if (fact instanceof MoneyFact.FillBilled f) {
            return names.say(f.guest() ? "fill.billed.guest" : "fill.billed", Map.of("payer", f.payer()));
        } else if (fact instanceof MoneyFact.TariffSet f) {
            return tariff(f, names);
        } else if (fact instanceof MoneyFact.CostEntered f) {
            return cost(f.cost(), names);
        } else if (fact instanceof MoneyFact.RentAgreed f) {
            return names.say(
                    "rent.agreed",
                    Map.of(
                            "from", f.from().toString(),
                            "perDay", names.said(f.rent().perDay())));
        } else if (fact instanceof MoneyFact.RentBilled f) {
            return names.say(
                    "rent.billed",
                    Map.of(
                            "bill", f.bill(),
                            "serial", f.line().serial(),
                            "from", f.line().from().toString(),
                            "to", f.line().to().toString(),
                            "amount", names.said(f.line().amount())));
        } else if (fact instanceof MoneyFact.MonthClosed f) {
            return names.say("month.closed", Map.of("month", f.month().toString(), "by", f.by()));
        }
        throw new AssertionError("unhandled " + fact);
    }

    private static String tariff(MoneyFact.TariffSet f, FactSentences names) {
        StatedTariff tariff = f.tariff();
        return names.say(
                "tariff.set." + tariff.unit().name().toLowerCase(Locale.ROOT),
                Map.of(
                        "from", f.from().toString(),
                        "perUnit", names.said(tariff.prices().perUnit()),
                        "perFill", names.said(tariff.prices().perFill()),
                        "minimum", names.said(tariff.prices().minimum()),
                        "guests", names.said(tariff.prices().guestPercent()),
                        "currency", tariff.currency()));
    }

    private static String cost(StatedCost cost, FactSentences names) {
        String serial = cost.serial();
        String kind = "cost." + cost.kind().name().toLowerCase(Locale.ROOT);
        return names.say(
                serial == null ? "cost.entered" : "cost.entered.serial",
                Map.of(
                        "kind", names.say(kind, Map.of()),
                        "day", cost.day().toString(),
                        "serial", serial == null ? "" : serial,
                        "amount", names.said(cost.amount())));
    }
}
