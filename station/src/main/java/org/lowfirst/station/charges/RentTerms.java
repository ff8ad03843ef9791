package org.lowfirst.station.charges;

import java.math.BigDecimal;
import java.util.Currency;

/**
 * What was agreed with the supplier.
 *
 * @param perDay for each cylinder and day, in the currency; may be finer than it can be paid
 * @param rounding how a sum of days becomes an amount
 * @param freeDays days at the start of each stay without rent, at least 0
 */
public record RentTerms(Currency currency, BigDecimal perDay, RoundingRule rounding, DayCount dayCount, int freeDays) {

    public RentTerms {
        if (perDay.signum() < 0 || freeDays < 0) {
            throw new IllegalArgumentException("The rent (" + perDay.toPlainString() + ") and the free days ("
                    + freeDays + ") must not be below zero.");
        }
    }

    /** Rent of a number of days at the agreed rate. */
    public Money rent(long days) {
        return rent(days, perDay);
    }

    /** Rent of a number of days at another rate, rounded as agreed. */
    Money rent(long days, BigDecimal rate) {
        return rounding.round(rate.multiply(BigDecimal.valueOf(days)), currency);
    }
}
