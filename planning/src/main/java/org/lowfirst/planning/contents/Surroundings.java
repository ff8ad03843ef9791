package org.lowfirst.planning.contents;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.StandardAtmosphere;

/**
 * What every reading at a bench is worked out with.
 *
 * @param gas the gas and its equation of state
 * @param ambient pressure of the surroundings, the zero of every gauge
 */
public record Surroundings(EquationOfState gas, AbsolutePressure ambient) {

    public static Surroundings standard(EquationOfState gas) {
        return new Surroundings(gas, StandardAtmosphere.PRESSURE);
    }
}
