package org.lowfirst.gas;

/**
 * A volume: the water volume of a cylinder, or free gas at a stated {@link ReferenceCondition}.
 *
 * @param cubicMetres volume [m3], finite, at least 0
 */
public record Volume(double cubicMetres) implements Comparable<Volume> {

    public Volume {
        if (!(cubicMetres >= 0.0) || Double.isInfinite(cubicMetres)) {
            throw new IllegalArgumentException(
                    "The volume (" + cubicMetres + " m3) must be finite and not below zero.");
        }
    }

    public static Volume of(double value, VolumeUnit unit) {
        return new Volume(unit.toCubicMetres(value));
    }

    public static Volume ofLitres(double litres) {
        return of(litres, VolumeUnit.LITRE);
    }

    public double to(VolumeUnit unit) {
        return unit.fromCubicMetres(cubicMetres);
    }

    public double toLitres() {
        return to(VolumeUnit.LITRE);
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(cubicMetres, other.cubicMetres);
    }
}
