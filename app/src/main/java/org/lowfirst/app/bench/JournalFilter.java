package org.lowfirst.app.bench;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.CylinderId;

/**
 * Which entries of a journal are wanted; whatever is null or empty does not matter.
 *
 * @param person who entered them, as written
 * @param cylinder what they are about
 * @param from earliest time they happened
 * @param until time before which they happened
 * @param text what their sentence says, capitals or not
 */
public record JournalFilter(
        @Nullable EntryGroup group,
        String person,
        @Nullable CylinderId cylinder,
        @Nullable Instant from,
        @Nullable Instant until,
        String text) {

    /** Everything. */
    public static final JournalFilter NONE = new JournalFilter(null, "", null, null, null, "");

    public boolean isNone() {
        return equals(NONE);
    }
}
