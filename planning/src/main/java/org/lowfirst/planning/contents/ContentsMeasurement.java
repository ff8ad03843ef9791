package org.lowfirst.planning.contents;

import org.lowfirst.gas.GaugePressure;

/**
 * What one reading says about the amount of gas, with the parts of its uncertainty.
 *
 * <p>The amount is worked out from the reading as shown, less the offset learned for its gauge. To first order
 * {@code amount = true amount + molesPerPascal (lasting error + scatter) + molesPerKelvin (temperature error)}.
 *
 * @param reading the reading, as taken
 * @param amount_mol gas inside [mol]
 * @param molesPerPascal change of the amount with the gauge pressure [mol/Pa]
 * @param molesPerKelvin change of the amount with the temperature [mol/K], below 0
 * @param gauge standard deviations of the gauge
 */
public record ContentsMeasurement(
        GaugeReading reading, double amount_mol, double molesPerPascal, double molesPerKelvin, GaugeErrors gauge) {

    /**
     * Standard deviations of one gauge at one reading.
     *
     * @param offset_Pa lasting error [Pa]
     * @param repeat_Pa scatter and rounding [Pa]
     * @param slope error of a difference along the scale, share of the difference
     * @param limit_Pa largest error of a working gauge [Pa]
     */
    public record GaugeErrors(double offset_Pa, double repeat_Pa, double slope, double limit_Pa) {}

    public GaugePressure shown() {
        return reading.shown();
    }

    /** Standard deviation of the scatter of the reading, as an amount [mol]. */
    double repeat_mol() {
        return molesPerPascal * gauge.repeat_Pa();
    }

    /** Standard deviation from the temperature, as an amount [mol]. */
    double temperature_mol() {
        return -molesPerKelvin * reading.temperature().standardDeviation_K();
    }

    /** Standard deviation of the lasting error of the gauge, as an amount [mol]. */
    double offset_mol() {
        return molesPerPascal * gauge.offset_Pa();
    }

    /** Largest error of a working gauge, as an amount [mol]. */
    double limit_mol() {
        return molesPerPascal * gauge.limit_Pa();
    }

    /** Variance of what changes from reading to reading of one gauge [mol2]. */
    double changingVariance_mol2() {
        return repeat_mol() * repeat_mol() + temperature_mol() * temperature_mol();
    }

    /** What this one reading says alone, the lasting error of the gauge included. */
    public ContentsEstimate alone() {
        return new ContentsEstimate(amount_mol, Math.hypot(Math.sqrt(changingVariance_mol2()), offset_mol()));
    }
}
