package org.lowfirst.station.charges;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * A fill as it is charged.
 *
 * @param fill its id in the journal
 * @param day day of the fill
 * @param person who pays
 * @param guest pays the guest surcharge
 * @param bottle what was filled
 * @param quantity gas in, in the tariff's unit
 */
public record ChargedFill(
        String fill, LocalDate day, String person, boolean guest, String bottle, BigDecimal quantity) {

    public ChargedFill {
        if (fill.isBlank() || person.isBlank()) {
            throw new IllegalArgumentException("The fill and the person who pays must be named.");
        }
        if (quantity.signum() < 0) {
            throw new IllegalArgumentException(
                    "The quantity of fill " + fill + " (" + quantity.toPlainString() + ") must not be below zero.");
        }
    }
}
