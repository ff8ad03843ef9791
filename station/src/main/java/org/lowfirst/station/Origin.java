package org.lowfirst.station;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * Where an entry comes from. Times are kept to the millisecond.
 *
 * @param recordedAt when the journal took it
 * @param effectiveAt when it happened
 * @param author name of the person who entered it
 */
public record Origin(EntryKey key, Instant recordedAt, Instant effectiveAt, String author) {

    public Origin {
        recordedAt = recordedAt.truncatedTo(ChronoUnit.MILLIS);
        effectiveAt = effectiveAt.truncatedTo(ChronoUnit.MILLIS);
    }
}
