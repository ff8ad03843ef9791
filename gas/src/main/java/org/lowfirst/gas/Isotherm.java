package org.lowfirst.gas;

/**
 * Pressure against molar density at one temperature, both ways. A numeric kernel: SI doubles, no allocation.
 *
 * <p>Immutable and thread-safe. Valid for absolute pressures from 0 to {@link #highestPressure_Pa()}; beyond it the methods
 * throw, because callers check their inputs against the range first.
 */
public interface Isotherm {

    Temperature temperature();

    /** Highest absolute pressure this isotherm covers [Pa]. */
    double highestPressure_Pa();

    /**
     * Molar density [mol/m3] at an absolute pressure.
     *
     * @param p_Pa absolute pressure [Pa], 0 to {@link #highestPressure_Pa()}
     * @throws IllegalArgumentException outside that range
     */
    double density_molPerM3(double p_Pa);

    /**
     * Absolute pressure [Pa] at a molar density; the inverse of {@link #density_molPerM3}.
     *
     * @param rho_molPerM3 molar density [mol/m3], 0 to the density at {@link #highestPressure_Pa()}
     * @throws IllegalArgumentException outside that range
     */
    double pressure_Pa(double rho_molPerM3);
}
