package org.lowfirst.app.bench;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.station.BilledStay;
import org.lowfirst.station.CostKind;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.StatedCost;
import org.lowfirst.station.StatedMoney;
import org.lowfirst.station.StatedPrices;
import org.lowfirst.station.StatedRent;
import org.lowfirst.station.StatedRounding;
import org.lowfirst.station.StatedTariff;
import org.lowfirst.station.charges.DayCount;
import org.lowfirst.station.charges.GasUnit;

/** Money facts in euro to test with. */
final class MoneyExamples {

    static final LocalDate DAY = LocalDate.of(2026, 6, 14);

    private MoneyExamples() {}

    /** From {@link #DAY} on, a price a standard litre. */
    static MoneyFact.TariffSet tariff(String perLitre, String minimum, String guestPercent) {
        return tariff(DAY, perLitre, minimum, guestPercent);
    }

    static MoneyFact.TariffSet tariff(LocalDate from, String perLitre, String minimum, String guestPercent) {
        return new MoneyFact.TariffSet(
                from,
                new StatedTariff(
                        "EUR",
                        GasUnit.STANDARD_LITRE,
                        ReferenceCondition.ISO_15C_1ATM,
                        1,
                        new StatedPrices(
                                new BigDecimal(perLitre),
                                BigDecimal.ZERO,
                                new BigDecimal(minimum),
                                new BigDecimal(guestPercent)),
                        rounding()));
    }

    static MoneyFact.CostEntered cost(CostKind kind, @Nullable String serial, String amount) {
        return cost(kind, DAY, serial, amount);
    }

    static MoneyFact.CostEntered cost(CostKind kind, LocalDate day, @Nullable String serial, String amount) {
        return new MoneyFact.CostEntered(new StatedCost(kind, day, serial, euro(amount), ""));
    }

    static MoneyFact.RentAgreed rent(String perDay) {
        return rent(DAY, perDay);
    }

    static MoneyFact.RentAgreed rent(LocalDate from, String perDay) {
        return new MoneyFact.RentAgreed(from, new StatedRent(euro(perDay), rounding(), DayCount.BOTH_ENDS, 0));
    }

    static MoneyFact.RentBilled billed(
            String bill, String serial, LocalDate from, LocalDate to, int days, String perDay, String amount) {
        return billed(bill, DAY, serial, from, to, days, perDay, amount);
    }

    static MoneyFact.RentBilled billed(
            String bill,
            LocalDate billedOn,
            String serial,
            LocalDate from,
            LocalDate to,
            int days,
            String perDay,
            String amount) {
        return new MoneyFact.RentBilled(
                bill, billedOn, new BilledStay(serial, from, to, days, euro(perDay), euro(amount)));
    }

    static StatedMoney euro(String amount) {
        return new StatedMoney(new BigDecimal(amount), "EUR");
    }

    private static StatedRounding rounding() {
        return new StatedRounding(StatedRounding.Way.HALF_UP, new BigDecimal("0.01"));
    }
}
