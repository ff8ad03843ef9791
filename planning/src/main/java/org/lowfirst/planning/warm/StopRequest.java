package org.lowfirst.planning.warm;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * A fill in progress.
 *
 * @param bottle the bottle
 * @param now what is known of its gas
 * @param bench temperature, rule set, model
 * @param compensation whether the gauge may go beyond the service pressure while the gas is warm
 * @param target settled gauge reading wanted at the bench's temperature; null for as full as the marking allows
 */
public record StopRequest(
        RatedBottle bottle,
        GasNow now,
        WarmBench bench,
        Compensation compensation,
        @Nullable GaugePressure target) {

    /** As full as the marking allows, without compensation. */
    public StopRequest(RatedBottle bottle, GasNow now, WarmBench bench) {
        this(bottle, now, bench, Compensation.OFF, null);
    }

    public StopRequest with(Compensation other) {
        return new StopRequest(bottle, now, bench, other, target);
    }
}
