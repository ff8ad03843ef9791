package org.lowfirst.transfer.warm;

import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;

/**
 * The air around supplies and bottle; constant while something is computed.
 *
 * @param temperature of the air, and of the walls that radiate back
 * @param pressure the zero of every gauge
 */
public record Surroundings(Temperature temperature, AbsolutePressure pressure) {

    /** Standard atmosphere at this temperature. */
    public static Surroundings at(Temperature temperature) {
        return new Surroundings(temperature, StandardAtmosphere.PRESSURE);
    }
}
