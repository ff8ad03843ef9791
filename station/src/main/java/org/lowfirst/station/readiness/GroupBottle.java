package org.lowfirst.station.readiness;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/**
 * One bottle of a group.
 *
 * @param group name of its group
 * @param reading latest reading, null when there is none
 * @param readAt when it was read, null when it was not
 * @param fit it passes the rules for being filled today
 */
public record GroupBottle(
        String name,
        String group,
        Place place,
        @Nullable GaugePressure reading,
        @Nullable Instant readAt,
        boolean fit) {

    public GroupBottle {
        if ((reading == null) != (readAt == null)) {
            throw new IllegalArgumentException("The reading of " + name + " and its time must be given together.");
        }
    }

    /** The reading when it was taken at this moment or later. */
    @Nullable
    GaugePressure readingSince(Instant start) {
        return readAt == null || readAt.isBefore(start) ? null : reading;
    }
}
