package org.lowfirst.planning;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/**
 * What holds for every fill at a bench today.
 *
 * @param gas the gas and its equation of state
 * @param bench temperature of the bench; supplies, bottles and hose are settled at it
 * @param reference temperature at which the marked service pressure counts, see {@link ReferenceRule}
 * @param ambient pressure of the surroundings, the zero of every gauge
 * @param hose volume between supply valves and transfer valve, 0 to leave it out of account; lost to the surroundings after
 *     each bottle (see {@link org.lowfirst.transfer.Hose})
 */
public record Conditions(
        EquationOfState gas, Temperature bench, Temperature reference, AbsolutePressure ambient, Volume hose) {

    /** Standard atmosphere, hose left out of account. */
    public static Conditions of(EquationOfState gas, Temperature bench, ReferenceRule rule) {
        return new Conditions(gas, bench, rule.temperature(), StandardAtmosphere.PRESSURE, new Volume(0.0));
    }

    public Conditions withHose(Volume volume) {
        return new Conditions(gas, bench, reference, ambient, volume);
    }
}
