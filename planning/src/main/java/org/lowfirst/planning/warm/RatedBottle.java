package org.lowfirst.planning.warm;

import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Mass;
import org.lowfirst.gas.Volume;
import org.lowfirst.transfer.warm.Answer;
import org.lowfirst.transfer.warm.Wall;
import org.lowfirst.transfer.warm.WallMaterial;
import org.lowfirst.transfer.warm.WallOrigin;
import org.lowfirst.transfer.warm.Walls;
import org.lowfirst.transfer.warm.WarmRefusal;

/**
 * A bottle as a warm plan needs it.
 *
 * @param name what the bench calls it
 * @param waterVolume internal volume
 * @param servicePressure marked pressure at the reference temperature
 * @param wall its wall; {@link Wall#assumed()} when it was sized from the two above
 */
public record RatedBottle(String name, Volume waterVolume, GaugePressure servicePressure, Wall wall) {

    /** Taken when nobody knows: its wall stores least heat, so the gas is taken to be rather warmer than it is. */
    private static final WallMaterial UNKNOWN = WallMaterial.STEEL;

    private static final double LIGHTEST_KG = 0.05;
    private static final double HEAVIEST_KG = 5_000.0;

    /**
     * A bottle as far as it is known.
     *
     * @param material null when unknown
     * @param empty its mass without gas; null when unknown, then the wall is sized and marked as assumed
     */
    public static Answer<RatedBottle> of(
            String name,
            Volume waterVolume,
            GaugePressure servicePressure,
            @Nullable WallMaterial material,
            @Nullable Mass empty) {
        WarmRefusal wrong = WarmCheck.first(
                WarmCheck.volume("water volume of bottle " + name, waterVolume),
                WarmCheck.rating("service pressure of bottle " + name, servicePressure),
                empty == null
                        ? null
                        : WarmCheck.number(
                                "empty mass of bottle " + name, empty.kilograms(), LIGHTEST_KG, HEAVIEST_KG, "kg"));
        if (wrong != null) {
            return Answer.refused(wrong);
        }
        WallMaterial known = material == null ? UNKNOWN : material;
        Wall wall = empty == null
                ? Walls.assumed(known, waterVolume, servicePressure)
                : Walls.ofMass(known, waterVolume, empty, material == null ? WallOrigin.ASSUMED : WallOrigin.STATED);
        return Answer.of(new RatedBottle(name, waterVolume, servicePressure, wall));
    }
}
