package org.lowfirst.station.charges;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * One line of rent on a supplier's invoice, as printed.
 *
 * @param reference invoice and line
 * @param to last day charged, included
 * @param days days as printed
 */
public record RentLine(
        String reference, String serial, LocalDate from, LocalDate to, int days, BigDecimal perDay, Money amount) {

    public RentLine {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException(
                    "The last day of " + reference + " (" + to + ") must not be before its first (" + from + ").");
        }
    }
}
