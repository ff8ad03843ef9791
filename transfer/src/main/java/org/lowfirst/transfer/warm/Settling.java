package org.lowfirst.transfer.warm;

import java.util.List;
import java.util.OptionalDouble;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * How a shut cylinder settles.
 *
 * @param settled what its gauge shows in the end
 * @param wait_s from the start until the gauge stays within the share asked for [s]; empty when that takes longer than allowed
 * @param end how it is at the last point of the series
 * @param series from the start until it is settled or the time is up
 * @param heatToAir_J heat that went to the surroundings, negative when it came from them [J]
 */
public record Settling(
        GaugePressure settled, OptionalDouble wait_s, WarmState end, List<Point> series, double heatToAir_J) {

    public Settling {
        series = List.copyOf(series);
    }

    /**
     * One moment.
     *
     * @param seconds since the start
     * @param reading what the gauge shows
     * @param gas temperature of the gas
     * @param wall temperature of the inner layer of the wall
     */
    public record Point(double seconds, GaugePressure reading, Temperature gas, Temperature wall) {}
}
