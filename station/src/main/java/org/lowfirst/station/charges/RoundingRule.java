package org.lowfirst.station.charges;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;

/**
 * How a charge becomes an amount that can be paid.
 *
 * @param step smallest amount charged, e.g. 0.01 or 0.05; above 0
 */
public record RoundingRule(RoundingMode mode, BigDecimal step) {

    public RoundingRule {
        if (step.signum() <= 0) {
            throw new IllegalArgumentException("The rounding step (" + step.toPlainString() + ") must be above 0.");
        }
        if (mode == RoundingMode.UNNECESSARY) {
            throw new IllegalArgumentException("The rounding mode must be one that rounds.");
        }
    }

    /** Half a step and more goes up. */
    public static RoundingRule halfUp(String step) {
        return new RoundingRule(RoundingMode.HALF_UP, new BigDecimal(step));
    }

    public Money round(BigDecimal exact, Currency currency) {
        return new Money(exact.divide(step, 0, mode).multiply(step), currency);
    }
}
