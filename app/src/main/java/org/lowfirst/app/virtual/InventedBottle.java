package org.lowfirst.app.virtual;

import org.lowfirst.gas.GaugePressure;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.transfer.warm.WarmVessel;

/**
 * A bottle as it is marked and as it is.
 *
 * @param vessel true water volume and wall
 */
public record InventedBottle(BottleDetails details, WarmVessel vessel) {

    /** The bottle as it comes to the bench, settled at this true pressure. */
    public CylinderTruth comesWith(GaugePressure settled) {
        return new CylinderTruth(details.name(), vessel, settled, 0.0);
    }
}
