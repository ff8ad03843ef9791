package org.lowfirst.station;

import java.time.LocalDate;
import java.time.YearMonth;

/** Prices, who pays, and what the supplier takes. */
public sealed interface MoneyFact extends AreaFact {

    /**
     * Who pays for a fill, when it is not the bottle's owner.
     *
     * @param guest pays the guest surcharge
     */
    record FillBilled(FillId fill, String payer, boolean guest) implements MoneyFact {}

    /**
     * What fills cost from a day on, until the first day of a later one; another with the same day replaces it.
     *
     * @param from first day, at the bench
     */
    record TariffSet(LocalDate from, StatedTariff tariff) implements MoneyFact {}

    /** Something was paid to the supplier, or came back. */
    record CostEntered(StatedCost cost) implements MoneyFact {}

    /**
     * The rent agreed with the supplier, from a day on; another with the same day replaces it.
     *
     * @param from first day of the stays it is for
     */
    record RentAgreed(LocalDate from, StatedRent rent) implements MoneyFact {}

    /**
     * One line of rent on a supplier's bill.
     *
     * @param bill number of the bill, as printed
     * @param billedOn day of the bill, the day it counts as a cost
     */
    record RentBilled(String bill, LocalDate billedOn, BilledStay line) implements MoneyFact {}

    /**
     * A month was closed: its lines stay as they are for ever, and what comes late is booked after it.
     *
     * @param by name of whoever answers for it
     */
    record MonthClosed(YearMonth month, String by) implements MoneyFact {}
}
