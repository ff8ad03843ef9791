package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/**
 * What is written on a supply.
 *
 * @param name how people at the bench call it, e.g. "A"
 * @param serial the stamped serial number, when read
 * @param servicePressure marked pressure at the rule set's reference temperature
 */
public record SupplyDetails(
        String name, @Nullable String serial, WaterVolume waterVolume, StatedPressure servicePressure) {}
