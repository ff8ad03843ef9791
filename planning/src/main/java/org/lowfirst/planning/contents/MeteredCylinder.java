package org.lowfirst.planning.contents;

import org.lowfirst.gas.Volume;

/**
 * A supply or bottle whose contents are estimated.
 *
 * @param name what the bench calls it, unique at the bench
 * @param waterVolume internal volume, above 0
 * @param volume where that comes from
 */
public record MeteredCylinder(String name, Volume waterVolume, VolumeOrigin volume) {

    /** Where a water volume comes from. */
    public enum VolumeOrigin {
        /** Stamped on the cylinder, or measured. */
        STAMPED,
        /** Worked out from a nameplate of contents and pressure. */
        DERIVED,
        /** From a catalogue, or guessed. */
        ASSUMED
    }

    public MeteredCylinder {
        if (!(waterVolume.cubicMetres() > 0.0)) {
            throw new IllegalArgumentException(
                    "The water volume (" + waterVolume.toLitres() + " L) of " + name + " must be above 0.");
        }
    }

    /** Standard deviation of the volume as a share of it. */
    double volumeShare(VolumeAssumptions assumptions) {
        return assumptions.share(volume);
    }
}
