package org.lowfirst.transfer.warm;

import java.util.List;

/**
 * The wall of a supply or a bottle.
 *
 * @param layers from inside to outside, one or two
 * @param innerArea_m2 surface the gas touches [m2]
 * @param outerArea_m2 surface the air touches [m2]
 * @param innerDiameter_m [m]
 * @param height_m outer length, standing upright [m]
 * @param emissivity of the outer surface [1], 0 to 1
 * @param origin where this comes from
 */
public record Wall(
        List<WallLayer> layers,
        double innerArea_m2,
        double outerArea_m2,
        double innerDiameter_m,
        double height_m,
        double emissivity,
        WallOrigin origin) {

    public Wall {
        layers = List.copyOf(layers);
        if (layers.isEmpty() || layers.size() > 2) {
            throw new IllegalArgumentException("The wall (" + layers.size() + " layers) must have one or two layers.");
        }
        if (!(innerArea_m2 > 0.0) || !(outerArea_m2 > 0.0) || !(innerDiameter_m > 0.0) || !(height_m > 0.0)) {
            throw new IllegalArgumentException("The areas (" + innerArea_m2 + " and " + outerArea_m2
                    + " m2), the diameter (" + innerDiameter_m + " m) and the height (" + height_m
                    + " m) of a wall must be above 0.");
        }
        if (!(emissivity >= 0.0 && emissivity <= 1.0)) {
            throw new IllegalArgumentException("The emissivity (" + emissivity + ") must be 0 to 1.");
        }
    }

    /** Whether it has to be shown as an assumption. */
    public boolean assumed() {
        return origin == WallOrigin.ASSUMED;
    }

    /** Mass of all layers [kg]. */
    public double mass_kg() {
        return layers.stream().mapToDouble(layer -> layer.mass().kilograms()).sum();
    }

    /** Heat capacity of all layers at a temperature [J/K]. */
    double capacity_JPerK(double T_K) {
        return layers.stream().mapToDouble(layer -> layer.capacity_JPerK(T_K)).sum();
    }
}
