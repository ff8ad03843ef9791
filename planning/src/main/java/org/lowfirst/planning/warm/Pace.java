package org.lowfirst.planning.warm;

import org.lowfirst.transfer.warm.FlowArea;
import org.lowfirst.transfer.warm.RiseRate;

/**
 * How a fill is worked.
 *
 * @param rate how fast the bottle's gauge is let rise
 * @param widest the transfer valve at its widest
 * @param changeover_s from shutting one supply to opening the next [s]
 * @param topUps how often, after the bank has been gone through, the bottle is left to cool and the bank gone through again
 * @param rest_s how long it is left each time [s]
 */
public record Pace(RiseRate rate, FlowArea widest, double changeover_s, int topUps, double rest_s) {

    /** Once through the bank at a rate. */
    public static Pace steady(RiseRate rate) {
        return new Pace(
                rate,
                new FlowArea(Assumptions.squareMetres("valve.area")),
                Assumptions.seconds("changeover.time"),
                0,
                0.0);
    }

    public Pace with(RiseRate other) {
        return new Pace(other, widest, changeover_s, topUps, rest_s);
    }

    /** The same with rests and top-ups. */
    public Pace toppedUp(int times, double restEach_s) {
        return new Pace(rate, widest, changeover_s, times, restEach_s);
    }
}
