package org.lowfirst.planning.contents;

import org.lowfirst.planning.contents.MeteredCylinder.VolumeOrigin;

/**
 * How well water volumes are known, as standard deviation / volume.
 *
 * @param stamped stamped on the cylinder or measured
 * @param derived worked out from a nameplate of contents and pressure
 * @param assumed taken from a catalogue or guessed
 */
public record VolumeAssumptions(double stamped, double derived, double assumed) {

    static VolumeAssumptions read(SettingsFile file) {
        return new VolumeAssumptions(
                file.positive("volume.stamped.sd_share"),
                file.positive("volume.derived.sd_share"),
                file.positive("volume.assumed.sd_share"));
    }

    /** Standard deviation / volume. */
    public double share(VolumeOrigin origin) {
        return switch (origin) {
            case STAMPED -> stamped;
            case DERIVED -> derived;
            case ASSUMED -> assumed;
        };
    }
}
