package org.lowfirst.app.virtual;

import org.jspecify.annotations.Nullable;
import org.lowfirst.station.StatedPressure;

/** The guide as a person meets it, whether through the use cases or through pages. Where it refuses, it throws: a test fails. */
public interface Guidance {

    /** Starts a fill; the first step. */
    NextStep start(FillOrder order);

    /** Says that a step without a reading is done; the next one. */
    NextStep done(NextStep step);

    /**
     * Enters what the gauges show.
     *
     * @param supply the supply's gauge; null at the end of the fill
     * @return the next step; null when the fill is over
     */
    @Nullable
    NextStep read(NextStep step, StatedPressure bottle, @Nullable StatedPressure supply);

    /** Comes back after an interruption and says how the valves stand; where the guide goes on. */
    NextStep comeBack(OpenValves valves);
}
