package org.lowfirst.gas;

/** Units of pressure, without saying gauge or absolute. */
public enum PressureUnit {
    /** Pound-force per square inch: 0.453 592 37 kg x 9.806 65 m/s2 / (0.0254 m)2 (exact by definition). */
    PSI("psi", 0.45359237 * 9.80665 / (0.0254 * 0.0254)),
    BAR("bar", 100_000.0),
    KILOPASCAL("kPa", 1_000.0),
    MEGAPASCAL("MPa", 1_000_000.0);

    private final String symbol;
    private final double pascalsPerUnit;

    PressureUnit(String symbol, double pascalsPerUnit) {
        this.symbol = symbol;
        this.pascalsPerUnit = pascalsPerUnit;
    }

    public String symbol() {
        return symbol;
    }

    public double toPascals(double value) {
        return value * pascalsPerUnit;
    }

    public double fromPascals(double pascals) {
        return pascals / pascalsPerUnit;
    }
}
