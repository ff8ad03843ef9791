package org.lowfirst.app.bench;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.FillId;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.SupplyId;

/**
 * Why the rest of a session is planned again.
 *
 * @param kind what happened
 * @param fill the fill it happened to; null when it is about the bank
 * @param supply the supply it happened on; null when it was before the first stage
 * @param expected what the bottle's gauge should have shown; null when it is not about a reading
 * @param read what it showed
 * @param allowed what its gauge may err by
 */
public record Surprise(
        Kind kind,
        @Nullable FillId fill,
        @Nullable SupplyId supply,
        @Nullable StatedPressure expected,
        @Nullable StatedPressure read,
        @Nullable GaugePressure allowed) {

    /** What can happen. */
    public enum Kind {
        /** A gauge differs from what was expected by more than it may err. */
        READING,
        /** A stage was done that was not planned. */
        UNPLANNED,
        SKIPPED,
        LEFT_OUT,
        /** A supply that was to be opened is no longer there, or must not be opened. */
        BANK
    }
}
