package org.lowfirst.transfer.warm;

import org.lowfirst.gas.Density;
import org.lowfirst.gas.GaugePressure;

/**
 * Where the valve is shut: at a reading of the bottle's gauge or at a density of its gas, whichever is first. The density is what
 * decides how the bottle reads once it has settled.
 *
 * @param reading gauge reading of the bottle
 * @param density molar density of the gas in the bottle
 */
public record Stop(GaugePressure reading, Density density) {

    /** More than any gas here can have [mol/m3]. */
    private static final Density NO_LIMIT = new Density(1e9);

    /** At this reading, whatever the bottle then holds. */
    public static Stop at(GaugePressure reading) {
        return new Stop(reading, NO_LIMIT);
    }
}
