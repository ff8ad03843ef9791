package org.lowfirst.station.charges;

import java.math.BigDecimal;

/**
 * What a fill costs, in the currency of the tariff.
 *
 * @param perUnit for each unit of gas
 * @param perFill for each fill, whatever went in
 * @param minimum least charge for a fill, before the surcharge
 * @param guestPercent added for guests [%]
 */
public record Prices(BigDecimal perUnit, BigDecimal perFill, BigDecimal minimum, BigDecimal guestPercent) {

    public Prices {
        if (perUnit.signum() < 0 || perFill.signum() < 0 || minimum.signum() < 0 || guestPercent.signum() < 0) {
            throw new IllegalArgumentException("The prices (" + perUnit.toPlainString() + ", " + perFill.toPlainString()
                    + ", " + minimum.toPlainString() + ", " + guestPercent.toPlainString()
                    + " %) must not be below zero.");
        }
    }
}
