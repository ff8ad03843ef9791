package org.lowfirst.station;

/**
 * Where the bench stands and what hangs on it.
 *
 * @param usualTemperature stands in for a temperature nobody read
 * @param ambient absolute pressure of the surroundings
 * @param hoseVolume volume between supply valve and bottle valve, zero when unknown
 */
public record Surroundings(
        StatedTemperature usualTemperature, StatedAbsolutePressure ambient, StatedVolume hoseVolume) {}
