package org.lowfirst.planning.study;

import org.lowfirst.gas.Temperature;

/**
 * The temperature of the bench through the year: a wave around the mean, and each day's chance on top.
 *
 * @param mean over the year
 * @param swing_K half the difference between the warmest and the coldest time of the year [K]
 * @param warmestDay day of the year at the top of the wave, 1 to 365
 * @param dailySpread_K standard deviation of a day around the wave [K]; cut off at three of them
 */
public record BenchTemperature(Temperature mean, double swing_K, int warmestDay, double dailySpread_K) {

    /** The same temperature on every day. */
    public static BenchTemperature constant(Temperature always) {
        return new BenchTemperature(always, 0.0, 1, 0.0);
    }
}
