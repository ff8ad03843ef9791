package org.lowfirst.station.stamp;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What has been read of the line so far.
 *
 * @param parts live view of the parts read
 */
record Seen(List<Part> parts, LocalDate today, MarkTable table) {

    /** The meaning read last, null at the start. */
    @Nullable
    Meaning last() {
        return lastBut(0);
    }

    /** The meaning read so many before the last, null when there are not that many. */
    @Nullable
    Meaning lastBut(int before) {
        int index = parts.size() - 1 - before;
        return index < 0 ? null : parts.get(index).meaning();
    }

    boolean has(Class<? extends Meaning> type) {
        return parts.stream().anyMatch(part -> type.isInstance(part.meaning()));
    }
}
