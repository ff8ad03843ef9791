package org.lowfirst.planning.warm;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.Change;
import org.lowfirst.transfer.warm.WarmEnding;

/**
 * One stretch of a fill on a clock.
 *
 * @param kind what is done
 * @param supply the supply that is open; null when none is
 * @param from_s when it starts [s]
 * @param to_s when it ends [s]
 * @param bottle the bottle's gauge before and after
 * @param supplyReading the supply's gauge before and after; null when none is open
 * @param ending how the stage ended; null when no supply is open
 * @param peakBottleGas highest temperature of the gas in the bottle
 */
public record Leg(
        Kind kind,
        @Nullable String supply,
        double from_s,
        double to_s,
        Change bottle,
        @Nullable Change supplyReading,
        @Nullable WarmEnding ending,
        Temperature peakBottleGas) {

    /** What is done in a stretch. */
    public enum Kind {
        /** A supply is open to the bottle. */
        STAGE,
        /** One supply is shut, the next not yet open. */
        CHANGEOVER,
        /** The bottle is left to cool. */
        REST
    }

    public double minutes() {
        return (to_s - from_s) / 60.0;
    }
}
