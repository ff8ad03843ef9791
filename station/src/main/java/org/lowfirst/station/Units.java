package org.lowfirst.station;

import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;

/** The one unit system of a bench. */
public record Units(PressureUnit pressure, TemperatureUnit temperature, VolumeUnit volume) {

    public static final Units US = new Units(PressureUnit.PSI, TemperatureUnit.FAHRENHEIT, VolumeUnit.CUBIC_FOOT);
    public static final Units METRIC = new Units(PressureUnit.BAR, TemperatureUnit.CELSIUS, VolumeUnit.LITRE);
}
