package org.lowfirst.gas;

/**
 * Pressure above vacuum.
 *
 * @param pascals absolute pressure [Pa], finite, at least 0
 */
public record AbsolutePressure(double pascals) implements Pressure, Comparable<AbsolutePressure> {

    public AbsolutePressure {
        if (!(pascals >= 0.0) || Double.isInfinite(pascals)) {
            throw new IllegalArgumentException("The absolute pressure (" + pascals
                    + " Pa) must be finite and not below zero.\nMaybe a gauge pressure was meant?");
        }
    }

    public static AbsolutePressure of(double value, PressureUnit unit) {
        return new AbsolutePressure(unit.toPascals(value));
    }

    public static AbsolutePressure ofBar(double bar) {
        return of(bar, PressureUnit.BAR);
    }

    public double to(PressureUnit unit) {
        return unit.fromPascals(pascals);
    }

    public double toBar() {
        return to(PressureUnit.BAR);
    }

    @Override
    public GaugePressure toGauge(AbsolutePressure ambient) {
        return new GaugePressure(pascals - ambient.pascals);
    }

    @Override
    public AbsolutePressure toAbsolute(AbsolutePressure ambient) {
        return this;
    }

    @Override
    public int compareTo(AbsolutePressure other) {
        return Double.compare(pascals, other.pascals);
    }
}
