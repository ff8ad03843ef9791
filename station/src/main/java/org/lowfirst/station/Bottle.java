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
        @Nullable Reading latest) {

    public boolean inUse() {
        return status == BottleStatus.IN_USE;
    }

    Bottle with(BottleDetails amended) {
        return new Bottle(id, amended, status, latest);
    }

    Bottle with(Reading reading) {
        return new Bottle(id, details, status, reading);
    }

    Bottle retired() {
        return new Bottle(id, details, BottleStatus.RETIRED, latest);
    }
}
