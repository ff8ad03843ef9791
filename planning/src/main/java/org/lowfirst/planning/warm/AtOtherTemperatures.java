package org.lowfirst.planning.warm;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.ReferenceRule;

/**
 * One reading, and what is to be known of it.
 *
 * @param reading what the gauge shows
 * @param gas temperature of the gas behind it
 * @param ambient pressure of the surroundings
 * @param at temperatures at which the same gas is to be read
 * @param waterVolume of the cylinder; null when contents are not asked for
 * @param condition condition at which contents are stated as a volume of free gas
 * @param rating what the cylinder is rated for; null when unknown
 */
public record AtOtherTemperatures(
        GaugePressure reading,
        Temperature gas,
        AbsolutePressure ambient,
        List<Temperature> at,
        @Nullable Volume waterVolume,
        ReferenceCondition condition,
        @Nullable Rating rating) {

    public AtOtherTemperatures {
        at = List.copyOf(at);
    }

    /** A service pressure and the rule set that says at which temperature it counts. */
    public record Rating(GaugePressure servicePressure, ReferenceRule rule) {}

    /** Standard atmosphere, free gas at 70 F and one atmosphere. */
    public static AtOtherTemperatures of(GaugePressure reading, Temperature gas, Temperature... at) {
        return new AtOtherTemperatures(
                reading, gas, StandardAtmosphere.PRESSURE, List.of(at), null, ReferenceCondition.US_70F_1ATM, null);
    }

    public AtOtherTemperatures in(Volume water, ReferenceCondition free) {
        return new AtOtherTemperatures(reading, gas, ambient, at, water, free, rating);
    }

    public AtOtherTemperatures rated(GaugePressure servicePressure, ReferenceRule rule) {
        return new AtOtherTemperatures(
                reading, gas, ambient, at, waterVolume, condition, new Rating(servicePressure, rule));
    }
}
