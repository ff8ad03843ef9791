package org.lowfirst.station;

import org.jspecify.annotations.Nullable;

/**
 * One bottle as the journal knows it.
 *
 * @param latest latest gauge reading, null before the first
 */
public record Bottle(
        BottleId id,
        BottleDetails details,
        BottleStatus status,
        @Nullable Reading latest) {}
