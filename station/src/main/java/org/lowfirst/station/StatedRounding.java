package org.lowfirst.station;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.lowfirst.station.charges.RoundingRule;

/**
 * How an exact charge becomes one that can be paid, as typed.
 *
 * @param step smallest amount charged, in the currency
 */
public record StatedRounding(Way way, BigDecimal step) {

    /** Which way it goes. */
    public enum Way {
        /** Half a step and more goes up. */
        HALF_UP(RoundingMode.HALF_UP),
        /** Half a step goes to the even step. */
        HALF_EVEN(RoundingMode.HALF_EVEN),
        /** Always to the payer's cost. */
        UP(RoundingMode.UP),
        /** Always to the payer's gain. */
        DOWN(RoundingMode.DOWN);

        private final RoundingMode mode;

        Way(RoundingMode mode) {
            this.mode = mode;
        }
    }

    /** @throws IllegalArgumentException for a step that is not above zero */
    RoundingRule rule() {
        return new RoundingRule(way.mode, step);
    }
}
