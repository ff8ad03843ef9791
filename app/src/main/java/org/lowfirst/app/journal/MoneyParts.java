package org.lowfirst.app.journal;

import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.Map;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.station.BilledStay;
import org.lowfirst.station.CostKind;
import org.lowfirst.station.StatedCost;
import org.lowfirst.station.StatedMoney;
import org.lowfirst.station.StatedPrices;
import org.lowfirst.station.StatedRent;
import org.lowfirst.station.StatedRounding;
import org.lowfirst.station.StatedTariff;
import org.lowfirst.station.charges.DayCount;
import org.lowfirst.station.charges.GasUnit;

/** How money is written: digits as typed beside their currency. */
final class MoneyParts {

    private static final Map<String, ReferenceCondition> CONDITIONS = Map.of(
            "70 F, 1 atm", ReferenceCondition.US_70F_1ATM,
            "15 C, 101.325 kPa", ReferenceCondition.ISO_15C_1ATM);

    private MoneyParts() {}

    static Payload write(StatedTariff tariff) {
        return new Payload()
                .with("currency", tariff.currency())
                .with("unit", Parts.lower(tariff.unit()))
                .with("condition", text(tariff.condition()))
                .with("quantityDecimals", (long) tariff.quantityDecimals())
                .with("perUnit", tariff.prices().perUnit().toPlainString())
                .with("perFill", tariff.prices().perFill().toPlainString())
                .with("minimum", tariff.prices().minimum().toPlainString())
                .with("guestPercent", tariff.prices().guestPercent().toPlainString())
                .with("rounding", write(tariff.rounding()));
    }

    static StatedTariff tariff(Payload p) {
        return new StatedTariff(
                p.text("currency"),
                Parts.choice(GasUnit.class, p.text("unit")),
                condition(p.text("condition")),
                whole(p, "quantityDecimals"),
                new StatedPrices(
                        Parts.decimal(p, "perUnit"),
                        Parts.decimal(p, "perFill"),
                        Parts.decimal(p, "minimum"),
                        Parts.decimal(p, "guestPercent")),
                p.part("rounding", MoneyParts::rounding));
    }

    private static Payload write(StatedRounding rounding) {
        return new Payload()
                .with("way", Parts.lower(rounding.way()))
                .with("step", rounding.step().toPlainString());
    }

    private static StatedRounding rounding(Payload p) {
        return new StatedRounding(Parts.choice(StatedRounding.Way.class, p.text("way")), Parts.decimal(p, "step"));
    }

    private static Payload write(StatedMoney money) {
        return new Payload().with("amount", money.value().toPlainString()).with("currency", money.currency());
    }

    private static StatedMoney money(Payload p) {
        return new StatedMoney(Parts.decimal(p, "amount"), p.text("currency"));
    }

    static Payload write(StatedCost cost) {
        return new Payload()
                .with("cost", Parts.lower(cost.kind()))
                .with("day", cost.day().toString())
                .with("serial", cost.serial())
                .with("money", write(cost.amount()))
                .with("note", cost.note());
    }

    static StatedCost cost(Payload p) {
        return new StatedCost(
                Parts.choice(CostKind.class, p.text("cost")),
                Parts.day(p.text("day")),
                p.textOrNull("serial"),
                p.part("money", MoneyParts::money),
                p.text("note"));
    }

    static Payload write(StatedRent rent) {
        return new Payload()
                .with("perDay", write(rent.perDay()))
                .with("rounding", write(rent.rounding()))
                .with("dayCount", Parts.lower(rent.dayCount()))
                .with("freeDays", (long) rent.freeDays());
    }

    static StatedRent rent(Payload p) {
        return new StatedRent(
                p.part("perDay", MoneyParts::money),
                p.part("rounding", MoneyParts::rounding),
                Parts.choice(DayCount.class, p.text("dayCount")),
                whole(p, "freeDays"));
    }

    static Payload write(BilledStay line) {
        return new Payload()
                .with("serial", line.serial())
                .with("from", line.from().toString())
                .with("to", line.to().toString())
                .with("days", (long) line.days())
                .with("perDay", write(line.perDay()))
                .with("amount", write(line.amount()));
    }

    static BilledStay billedStay(Payload p) {
        return new BilledStay(
                p.text("serial"),
                Parts.day(p.text("from")),
                Parts.day(p.text("to")),
                whole(p, "days"),
                p.part("perDay", MoneyParts::money),
                p.part("amount", MoneyParts::money));
    }

    static YearMonth month(String text) {
        try {
            return YearMonth.parse(text);
        } catch (DateTimeException e) {
            throw new JsonFault("the month " + text + " is not like 2026-06", 0, e);
        }
    }

    private static int whole(Payload p, String name) {
        long number = p.number(name);
        if (number != (int) number) {
            throw new JsonFault("the number " + number + " is too large", 0);
        }
        return (int) number;
    }

    private static String text(ReferenceCondition condition) {
        return CONDITIONS.entrySet().stream()
                .filter(entry -> entry.getValue().equals(condition))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "The condition (" + condition.label() + ") must be one of " + CONDITIONS.keySet() + "."));
    }

    private static ReferenceCondition condition(String text) {
        ReferenceCondition found = CONDITIONS.get(text);
        if (found == null) {
            throw new JsonFault(text + " is not a known reference condition", 0);
        }
        return found;
    }
}
