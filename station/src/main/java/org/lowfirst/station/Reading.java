package org.lowfirst.station;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What a gauge showed: kept as typed.
 *
 * @param at when it was read
 * @param temperature of the surroundings when it was read
 * @param temperatureAssumed true when nobody read a thermometer and the bench's usual temperature stands in
 * @param gauge which gauge, when known
 */
public record Reading(
        StatedPressure pressure,
        Instant at,
        StatedTemperature temperature,
        boolean temperatureAssumed,
        @Nullable String gauge) {}
