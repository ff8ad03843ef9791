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
 * @param permitted highest settled gauge reading at the reference temperature that the rule book in force permits; null when no
 *     book was asked, then the marked pressure and the developed pressure limit hold
 */
public record RatedBottle(
        String name,
        Volume waterVolume,
        GaugePressure servicePressure,
        Wall wall,
        @Nullable GaugePressure permitted) {

    /** A book that permits the marked pressure says no other number [Pa]. */
    private static final double SAME_PA = 100.0;

    /** Taken when nobody knows: its wall stores least heat, so the gas is taken to be rather warmer than it is. */
    private static final WallMaterial UNKNOWN = WallMaterial.STEEL;

    private static final double LIGHTEST_KG = 0.05;
    private static final double HEAVIEST_KG = 5_000.0;

    /** With no rule book asked. */
    public RatedBottle(String name, Volume waterVolume, GaugePressure servicePressure, Wall wall) {
        this(name, waterVolume, servicePressure, wall, null);
    }

    /** The same by a rule book: {@code most} is its highest settled gauge reading at the reference temperature. */
    public RatedBottle permitting(GaugePressure most) {
        return new RatedBottle(name, waterVolume, servicePressure, wall, most);
    }

    /** Highest settled gauge reading at the reference temperature, as far as bottle and book say. */
    public GaugePressure most() {
        return permitted == null ? servicePressure : permitted;
    }

    /** Whether the book permits another pressure than the marked one. */
    public boolean isMarkedOtherwise() {
        return Math.abs(most().pascals() - servicePressure.pascals()) > SAME_PA;
    }

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
