package org.lowfirst.transfer.warm;

import org.lowfirst.gas.Volume;

/**
 * A supply or a bottle with its wall.
 *
 * @param waterVolume internal volume, above 0
 * @param wall what it is made of
 * @param contact how the gas meets the wall
 */
public record WarmVessel(Volume waterVolume, Wall wall, Contact contact) {

    public WarmVessel {
        if (!(waterVolume.cubicMetres() > 0.0)) {
            throw new IllegalArgumentException(
                    "The water volume (" + waterVolume.cubicMetres() + " m3) of a vessel must be above 0.");
        }
    }

    /** Heat passes between gas and wall by convection. */
    public WarmVessel(Volume waterVolume, Wall wall) {
        this(waterVolume, wall, Contact.CONVECTION);
    }

    public WarmVessel with(Contact other) {
        return new WarmVessel(waterVolume, wall, other);
    }
}
