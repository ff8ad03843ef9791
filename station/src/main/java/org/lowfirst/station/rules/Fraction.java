package org.lowfirst.station.rules;

import org.lowfirst.gas.GaugePressure;

/**
 * A factor as rules write it, e.g. 5/4.
 *
 * @param over numerator, above 0
 * @param under denominator, above 0
 */
public record Fraction(int over, int under) {

    public Fraction {
        if (over <= 0 || under <= 0) {
            throw new IllegalArgumentException("The fraction (" + over + "/" + under + ") must be above 0.");
        }
    }

    GaugePressure of(GaugePressure pressure) {
        return new GaugePressure(pressure.pascals() * over / under);
    }

    @Override
    public String toString() {
        return over + "/" + under;
    }
}
