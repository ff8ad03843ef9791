package org.lowfirst.station;

import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;

/**
 * The units of a bench; two usual sets, or each chosen by itself.
 *
 * @param volume of gas, as counted
 */
public record Units(PressureUnit pressure, TemperatureUnit temperature, VolumeUnit volume) {

    public static final Units US = new Units(PressureUnit.PSI, TemperatureUnit.FAHRENHEIT, VolumeUnit.CUBIC_FOOT);
    public static final Units METRIC = new Units(PressureUnit.BAR, TemperatureUnit.CELSIUS, VolumeUnit.LITRE);
}
