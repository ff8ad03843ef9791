package org.lowfirst.web.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.Accounts;
import org.lowfirst.station.MoneyFact.TariffSet;
import org.lowfirst.station.Rule;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.StatedPrices;
import org.lowfirst.station.StatedRounding;
import org.lowfirst.station.StatedTariff;
import org.lowfirst.station.charges.GasUnit;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.form.Reader;
import org.lowfirst.web.workplace.BenchNow;
import org.lowfirst.web.workplace.Sender;

/** The fields of the prices form. */
final class PricesFields {

    private static final String CUBIC_FOOT = "cubic-foot";
    private static final Map<Rule, String> FIELDS = Map.of(
            Rule.CURRENCY_UNKNOWN, "currency",
            Rule.CURRENCY_OTHER, "currency",
            Rule.GUEST_PERCENT_OUT_OF_RANGE, "guests",
            Rule.ROUNDING_STEP_NOT_PAYABLE, "step",
            Rule.QUANTITY_DECIMALS_OUT_OF_RANGE, "decimals",
            Rule.DAY_OUT_OF_RANGE, "from",
            Rule.DAY_IN_CLOSED_MONTH, "from",
            Rule.NOT_TREASURER, Sender.WHO);

    private PricesFields() {}

    static String field(Optional<Rule> rule) {
        return rule.map(broken -> FIELDS.getOrDefault(broken, "form")).orElse("form");
    }

    /** What stands in the form at first: the prices in force, from today on. */
    static Map<String, String> filled(BenchNow now, LocalDate today) {
        Accounts accounts = now.bench().areas().accounts();
        Map<String, String> fields = new HashMap<>();
        fields.put("from", today.toString());
        fields.put("currency", accounts.currency() == null ? "" : accounts.currency());
        boolean feet = now.bench().settings().units().volume() == VolumeUnit.CUBIC_FOOT;
        fields.put("unit", feet ? CUBIC_FOOT : "litre");
        fields.put("decimals", feet ? "2" : "1");
        fields.put("way", "half_up");
        fields.put("step", now.figures().toType(new BigDecimal("0.01")));
        accounts.findTariff(today).map(TariffSet::tariff).ifPresent(tariff -> fill(fields, tariff, now.figures()));
        return fields;
    }

    private static void fill(Map<String, String> fields, StatedTariff tariff, Figures figures) {
        fields.put("unit", tariff.unit() == GasUnit.STANDARD_CUBIC_FOOT ? CUBIC_FOOT : "litre");
        fields.put("price", figures.toType(tariff.prices().perUnit()));
        fields.put("fill", figures.toType(tariff.prices().perFill()));
        fields.put("minimum", figures.toType(tariff.prices().minimum()));
        fields.put("guests", figures.toType(tariff.prices().guestPercent()));
        fields.put("decimals", Integer.toString(tariff.quantityDecimals()));
        fields.put("way", tariff.rounding().way().name().toLowerCase(Locale.ROOT));
        fields.put("step", figures.toType(tariff.rounding().step()));
    }

    /** The tariff the form makes, or null with faults in the reader. */
    static @Nullable StatedTariff read(Reader reader, BenchNow now) {
        String currency = reader.required("currency", "fault.currency").toUpperCase(Locale.ROOT);
        Amounts amounts = new Amounts(reader, now.words(), currency);
        @Nullable BigDecimal price = amounts.price("price");
        @Nullable BigDecimal perFill = amounts.price("fill");
        @Nullable BigDecimal minimum = amounts.price("minimum");
        @Nullable BigDecimal guests = amounts.price("guests");
        @Nullable BigDecimal step = amounts.required("step");
        if (price == null || perFill == null || minimum == null || guests == null || step == null) {
            return null;
        }
        boolean us = now.bench().settings().rules() == RuleSet.US;
        return new StatedTariff(
                currency,
                reader.text("unit").equals(CUBIC_FOOT) ? GasUnit.STANDARD_CUBIC_FOOT : GasUnit.STANDARD_LITRE,
                us ? ReferenceCondition.US_70F_1ATM : ReferenceCondition.ISO_15C_1ATM,
                decimals(reader.text("decimals")),
                new StatedPrices(price, perFill, minimum, guests),
                new StatedRounding(way(reader.text("way")), step));
    }

    static @Nullable LocalDate from(Reader reader, BenchNow now) {
        if (reader.empty("from")) {
            reader.fault("from", now.words().of("fault.day.empty"));
        }
        return reader.dayIfTyped("from");
    }

    private static int decimals(String text) {
        return text.matches("[0-9]") ? Integer.parseInt(text) : 1;
    }

    private static StatedRounding.Way way(String text) {
        for (StatedRounding.Way way : StatedRounding.Way.values()) {
            if (way.name().equalsIgnoreCase(text)) {
                return way;
            }
        }
        return StatedRounding.Way.HALF_UP;
    }
}
