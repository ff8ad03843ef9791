package org.lowfirst.gas;

/** Units of volume. */
public enum VolumeUnit {
    LITRE("L", 1e-3),
    /** Cubic foot: (0.3048 m)3 exactly. */
    CUBIC_FOOT("cu ft", 0.3048 * 0.3048 * 0.3048),
    /** Cubic inch: (0.0254 m)3 exactly. */
    CUBIC_INCH("cu in", 0.0254 * 0.0254 * 0.0254),
    CUBIC_METRE("m3", 1.0);

    private final String symbol;
    private final double cubicMetresPerUnit;

    VolumeUnit(String symbol, double cubicMetresPerUnit) {
        this.symbol = symbol;
        this.cubicMetresPerUnit = cubicMetresPerUnit;
    }

    public String symbol() {
        return symbol;
    }

    public double toCubicMetres(double value) {
        return value * cubicMetresPerUnit;
    }

    public double fromCubicMetres(double cubicMetres) {
        return cubicMetres / cubicMetresPerUnit;
    }
}
