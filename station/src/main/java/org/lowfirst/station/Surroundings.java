package org.lowfirst.station;

import org.lowfirst.gas.AbsolutePressure;

/**
 * Where the bench stands and what hangs on it.
 *
 * @param usualTemperature stands in for a temperature nobody read
 * @param ambient absolute pressure of the surroundings
 * @param hoseVolume volume between supply valve and bottle valve, zero when unknown
 */
public record Surroundings(StatedTemperature usualTemperature, AbsolutePressure ambient, StatedVolume hoseVolume) {}
