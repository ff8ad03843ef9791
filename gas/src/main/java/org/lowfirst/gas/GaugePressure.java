package org.lowfirst.gas;

/**
 * Pressure above the surroundings, as a gauge shows it.
 *
 * @param pascals gauge pressure [Pa], finite; negative below the surroundings
 */
public record GaugePressure(double pascals) implements Pressure, Comparable<GaugePressure> {

    public static final GaugePressure ZERO = new GaugePressure(0.0);

    public GaugePressure {
        if (!Double.isFinite(pascals)) {
            throw new IllegalArgumentException("The gauge pressure (" + pascals + " Pa) must be finite.");
        }
    }

    public static GaugePressure of(double value, PressureUnit unit) {
        return new GaugePressure(unit.toPascals(value));
    }

    public static GaugePressure ofBar(double bar) {
        return of(bar, PressureUnit.BAR);
    }

    public static GaugePressure ofPsi(double psi) {
        return of(psi, PressureUnit.PSI);
    }

    public double to(PressureUnit unit) {
        return unit.fromPascals(pascals);
    }

    public double toBar() {
        return to(PressureUnit.BAR);
    }

    public double toPsi() {
        return to(PressureUnit.PSI);
    }

    @Override
    public GaugePressure toGauge(AbsolutePressure ambient) {
        return this;
    }

    @Override
    public AbsolutePressure toAbsolute(AbsolutePressure ambient) {
        return new AbsolutePressure(pascals + ambient.pascals());
    }

    @Override
    public int compareTo(GaugePressure other) {
        return Double.compare(pascals, other.pascals);
    }
}
