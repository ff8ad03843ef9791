package org.lowfirst.app.honest;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.contents.ContentsEstimate;
import org.lowfirst.station.CylinderId;

/**
 * A cylinder as its readings leave it.
 *
 * @param id the cylinder
 * @param name what the bench calls it
 * @param inUse whether the supply is connected, the bottle not retired
 * @param estimate its contents
 * @param freeVolume contents at the reference condition of the rule set
 * @param freeVolumeWithin half-width of that at 95 %
 * @param shows what its gauge should show, settled at the bench's usual temperature; null when that cannot be computed
 * @param showsWithin half-width of that at 95 %; null with {@code shows}
 * @param verdict the verdict that stands; null before there is anything to compare
 */
public record CylinderNow(
        CylinderId id,
        String name,
        boolean inUse,
        ContentsEstimate estimate,
        Volume freeVolume,
        Volume freeVolumeWithin,
        @Nullable GaugePressure shows,
        @Nullable GaugePressure showsWithin,
        @Nullable StandingVerdict verdict) {}
