package org.lowfirst.gas;

/**
 * Molar density of the gas.
 *
 * @param molesPerCubicMetre molar density [mol/m3], finite, at least 0
 */
public record Density(double molesPerCubicMetre) implements Comparable<Density> {

    public Density {
        if (!(molesPerCubicMetre >= 0.0) || Double.isInfinite(molesPerCubicMetre)) {
            throw new IllegalArgumentException(
                    "The density (" + molesPerCubicMetre + " mol/m3) must be finite and not below zero.");
        }
    }

    /** Amount of gas in a rigid volume at this density. */
    public Amount amountIn(Volume volume) {
        return new Amount(molesPerCubicMetre * volume.cubicMetres());
    }

    @Override
    public int compareTo(Density other) {
        return Double.compare(molesPerCubicMetre, other.molesPerCubicMetre);
    }
}
