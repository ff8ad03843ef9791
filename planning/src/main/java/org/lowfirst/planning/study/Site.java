package org.lowfirst.planning.study;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/**
 * Where the bench stands.
 *
 * @param gas the gas and its equation of state
 * @param temperature through the year
 * @param reference temperature at which service pressures and delivered readings count
 * @param ambient pressure of the surroundings
 * @param hose hose volume, lost to the surroundings after each bottle; 0 leaves it out of account
 */
public record Site(
        EquationOfState gas,
        BenchTemperature temperature,
        Temperature reference,
        AbsolutePressure ambient,
        Volume hose) {

    /** Standard atmosphere, hose left out of account. */
    public static Site of(EquationOfState gas, BenchTemperature temperature, Temperature reference) {
        return new Site(gas, temperature, reference, StandardAtmosphere.PRESSURE, new Volume(0.0));
    }
}
