package org.lowfirst.planning.contents;

import java.time.Instant;
import org.lowfirst.gas.GaugePressure;

/**
 * What a gauge on a cylinder showed.
 *
 * @param at when
 * @param cylinder name of the cylinder
 * @param gauge name of the gauge
 * @param shown what it showed
 * @param temperature temperature of the gas then
 */
public record GaugeReading(
        Instant at, String cylinder, String gauge, GaugePressure shown, GasTemperature temperature) {}
