package org.lowfirst.station;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * What a gauge showed: kept as typed.
 *
 * @param at when it was read, kept to the millisecond
 * @param temperature of the surroundings when it was read
 * @param temperatureAssumed true when nobody read a thermometer and the bench's usual temperature stands in
 * @param gauge which gauge, when known
 */
public record Reading(
        StatedPressure pressure,
        Instant at,
        StatedTemperature temperature,
        boolean temperatureAssumed,
        @Nullable String gauge) {

    public Reading {
        at = at.truncatedTo(ChronoUnit.MILLIS);
    }
}
