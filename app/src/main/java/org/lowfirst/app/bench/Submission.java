package org.lowfirst.app.bench;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.EntryKey;

/**
 * How something is sent to a bench.
 *
 * @param key made by the client once per thing to record and repeated on every retry
 * @param author name of the person who enters it
 * @param effectiveAt when it happened; null for now
 * @param confirmed true when the person has looked again and insists on an unlikely value
 */
public record Submission(
        EntryKey key, String author, @Nullable Instant effectiveAt, boolean confirmed) {

    public static Submission now(EntryKey key, String author) {
        return new Submission(key, author, null, false);
    }
}
