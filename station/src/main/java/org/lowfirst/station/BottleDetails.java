package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/**
 * What is known of a bottle.
 *
 * @param name how people at the bench call it
 * @param owner whose it is
 * @param servicePressure marked pressure at the rule set's reference temperature
 * @param usualTarget what it is usually filled to, settled; at most the service pressure
 */
public record BottleDetails(
        String name,
        String owner,
        WaterVolume waterVolume,
        StatedPressure servicePressure,
        @Nullable Material material,
        @Nullable StatedPressure usualTarget) {}
