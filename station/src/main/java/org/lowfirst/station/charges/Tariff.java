package org.lowfirst.station.charges;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Volume;

/**
 * How fills are charged. The quantity is rounded first and charged as it is printed, so that a line can be checked by hand.
 *
 * @param condition reference condition the units of gas are stated at
 * @param quantityDecimals digits after the point of a quantity, 0 to 6
 */
public record Tariff(
        Currency currency,
        GasUnit unit,
        ReferenceCondition condition,
        Prices prices,
        RoundingRule rounding,
        int quantityDecimals) {

    public Tariff {
        if (quantityDecimals < 0 || quantityDecimals > 6) {
            throw new IllegalArgumentException("The digits of a quantity (" + quantityDecimals + ") must be 0 to 6.");
        }
        // A step that the currency cannot pay is found now, not at the first fill.
        new Money(rounding.step(), currency);
    }

    /**
     * The quantity that is printed and charged.
     *
     * @param free volume the gas takes at the tariff's condition
     */
    public BigDecimal quantity(Volume free) {
        return BigDecimal.valueOf(free.to(unit.unit())).setScale(quantityDecimals, RoundingMode.HALF_UP);
    }

    /** Charges a quantity, at least zero, in the tariff's unit. */
    public Charge charge(BigDecimal quantity, boolean guest) {
        if (quantity.signum() < 0) {
            throw new IllegalArgumentException(
                    "The quantity (" + quantity.toPlainString() + ") must not be below zero.");
        }
        BigDecimal billed = quantity.setScale(quantityDecimals, RoundingMode.HALF_UP);
        BigDecimal gas = billed.multiply(prices.perUnit());
        BigDecimal plain = gas.add(prices.perFill());
        boolean minimum = plain.compareTo(prices.minimum()) < 0;
        BigDecimal before = minimum ? prices.minimum() : plain;
        BigDecimal surcharge = guest ? before.multiply(prices.guestPercent()).movePointLeft(2) : BigDecimal.ZERO;
        BigDecimal exact = before.add(surcharge);
        return new Charge(billed, gas, minimum, surcharge, exact, rounding.round(exact, currency));
    }
}
