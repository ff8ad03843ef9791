package org.lowfirst.transfer.warm;

import org.lowfirst.gas.PressureUnit;

/**
 * How fast a gauge rises.
 *
 * @param pascalsPerSecond [Pa/s], above 0
 */
public record RiseRate(double pascalsPerSecond) implements Comparable<RiseRate> {

    private static final double SECONDS_PER_MINUTE = 60.0;

    public RiseRate {
        if (!(pascalsPerSecond > 0.0) || Double.isInfinite(pascalsPerSecond)) {
            throw new IllegalArgumentException("The rise (" + pascalsPerSecond + " Pa/s) must be above 0.");
        }
    }

    public static RiseRate perMinute(double value, PressureUnit unit) {
        return new RiseRate(unit.toPascals(value) / SECONDS_PER_MINUTE);
    }

    public static RiseRate ofPsiPerMinute(double psi) {
        return perMinute(psi, PressureUnit.PSI);
    }

    public static RiseRate ofBarPerMinute(double bar) {
        return perMinute(bar, PressureUnit.BAR);
    }

    public double toPerMinute(PressureUnit unit) {
        return unit.fromPascals(pascalsPerSecond) * SECONDS_PER_MINUTE;
    }

    public RiseRate times(double factor) {
        return new RiseRate(pascalsPerSecond * factor);
    }

    @Override
    public int compareTo(RiseRate other) {
        return Double.compare(pascalsPerSecond, other.pascalsPerSecond);
    }
}
