package org.lowfirst.planning;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Temperature;

/**
 * Gas settled at one temperature, seen through gauges in one surroundings.
 *
 * @param isotherm pressure against density at the temperature
 * @param ambient pressure of the surroundings
 */
record Settled(Isotherm isotherm, AbsolutePressure ambient) {

    Temperature temperature() {
        return isotherm.temperature();
    }

    /** Molar density [mol/m3] behind a reading. */
    double density_molPerM3(GaugePressure reading) {
        return isotherm.density_molPerM3(reading.pascals() + ambient.pascals());
    }

    /** Reading of gas of this molar density [mol/m3]. */
    GaugePressure reading(double rho_molPerM3) {
        return new GaugePressure(isotherm.pressure_Pa(rho_molPerM3) - ambient.pascals());
    }

    /** Molar density [mol/m3] at the pressure of the surroundings. */
    double ambientDensity_molPerM3() {
        return isotherm.density_molPerM3(ambient.pascals());
    }

    GaugePressure highestReading() {
        return new GaugePressure(isotherm.highestPressure_Pa() - ambient.pascals());
    }
}
