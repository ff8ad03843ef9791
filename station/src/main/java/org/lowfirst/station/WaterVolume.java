package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/**
 * The water volume of a cylinder and how it is known.
 *
 * @param stated internal volume as typed or worked out, above zero
 * @param source the nameplate text or the catalogue size it came from, when there is one
 */
public record WaterVolume(
        StatedVolume stated, VolumeBasis basis, @Nullable String source) {

    public static WaterVolume stamped(StatedVolume stated) {
        return new WaterVolume(stated, VolumeBasis.STAMPED, null);
    }
}
