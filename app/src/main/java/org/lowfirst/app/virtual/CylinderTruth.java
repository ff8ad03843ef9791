package org.lowfirst.app.virtual;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.transfer.warm.WarmVessel;

/**
 * A supply or a bottle as it really is.
 *
 * @param name what the bench calls it
 * @param vessel true water volume and wall
 * @param settled true gauge reading when it comes to the bench, settled
 * @param leakPerDay share of its contents that escapes in a day, 0 for none
 */
public record CylinderTruth(String name, WarmVessel vessel, GaugePressure settled, double leakPerDay) {

    public CylinderTruth {
        if (!(leakPerDay >= 0.0 && leakPerDay < 1.0)) {
            throw new IllegalArgumentException(
                    "The leak (" + leakPerDay + " of the contents a day) must be at least 0 and below 1.");
        }
    }
}
