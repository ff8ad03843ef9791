package org.lowfirst.station;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A generic size of cylinder. What is stamped on the cylinder wins over every figure here.
 *
 * @param label how the size is called, e.g. "M24/E"
 * @param waterVolume lowest to highest water volume sold under this label
 * @param ratedContents free gas when full [L], null when the source gives none
 * @param servicePressure usual marking
 * @param material usual material, null when it varies
 * @param emptyMass lowest to highest mass without valve gas [lb], null when not known
 * @param origin where the figures come from
 */
public record Size(
        String label,
        VolumeSpan waterVolume,
        @Nullable BigDecimal ratedContents,
        StatedPressure servicePressure,
        @Nullable Material material,
        @Nullable MassSpan emptyMass,
        SizeOrigin origin) {

    /**
     * @param lowest smallest water volume
     * @param highest largest water volume, the same when there is but one figure
     * @param derived true when worked out from the rated contents, false when the size is named by it
     */
    public record VolumeSpan(StatedVolume lowest, StatedVolume highest, boolean derived) {}

    /**
     * @param lowest_lb lightest [lb]
     * @param highest_lb heaviest [lb]
     */
    public record MassSpan(BigDecimal lowest_lb, BigDecimal highest_lb) {}
}
