package org.lowfirst.planning.warm;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.Turn;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.Wall;
import org.lowfirst.transfer.warm.WallMaterial;
import org.lowfirst.transfer.warm.Walls;
import org.lowfirst.transfer.warm.WarmRefusal;

/**
 * A supply as a plan on a clock needs it.
 *
 * @param name what the bench calls it
 * @param waterVolume internal volume
 * @param reading settled gauge reading at the bench's temperature
 * @param wall its wall
 * @param turn when it is opened
 */
public record TimedSupply(String name, Volume waterVolume, GaugePressure reading, Wall wall, Turn turn) {

    private static final GaugePressure COMMON_SERVICE_PRESSURE = GaugePressure.ofBar(200.0);

    /** Opened by its rank. */
    public TimedSupply(String name, Volume waterVolume, GaugePressure reading, Wall wall) {
        this(name, waterVolume, reading, wall, Turn.BY_RANK);
    }

    public TimedSupply in(Turn other) {
        return new TimedSupply(name, waterVolume, reading, wall, other);
    }

    /**
     * A supply as far as it is known; its wall is sized and marked as assumed.
     *
     * @param servicePressure null when unknown, then 200 bar
     * @param material null when unknown, then steel
     */
    public static Answer<TimedSupply> of(
            String name,
            Volume waterVolume,
            GaugePressure reading,
            @Nullable GaugePressure servicePressure,
            @Nullable WallMaterial material) {
        GaugePressure service = servicePressure == null ? COMMON_SERVICE_PRESSURE : servicePressure;
        WarmRefusal wrong = WarmCheck.first(
                WarmCheck.volume("water volume of supply " + name, waterVolume),
                WarmCheck.reading("reading of supply " + name, reading),
                WarmCheck.rating("service pressure of supply " + name, service));
        return wrong != null
                ? Answer.refused(wrong)
                : Answer.of(new TimedSupply(
                        name,
                        waterVolume,
                        reading,
                        Walls.assumed(material == null ? WallMaterial.STEEL : material, waterVolume, service)));
    }
}
