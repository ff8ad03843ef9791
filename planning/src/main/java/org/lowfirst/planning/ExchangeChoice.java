package org.lowfirst.planning;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;

/**
 * One supply sent back and another of the same water volume in its place, and what that does for this bottle.
 *
 * @param supply the supply that leaves
 * @param residual what it reads when it leaves
 * @param returned gas that leaves with it
 * @param leastReading least reading of its replacement that brings the bottle to its stop; null when none within the gas's range
 *     does
 * @param withFull what a full one would do; null when it is unknown what a full one reads
 */
public record ExchangeChoice(
        String supply,
        GaugePressure residual,
        Amount returned,
        @Nullable GaugePressure leastReading,
        @Nullable WithFull withFull) {

    /**
     * @param reaches whether this bottle then comes to its stop
     * @param finalReading what it then reads at the end
     * @param fillsLeft such fills from the bank after the exchange, this one included
     */
    public record WithFull(boolean reaches, GaugePressure finalReading, FillsLeft fillsLeft) {}

    /** Whether a full one is known to bring the bottle to its stop. */
    public boolean reaches() {
        return withFull != null && withFull.reaches();
    }
}
