package org.lowfirst.app.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lowfirst.station.Entry;

/**
 * One entry as people read it.
 *
 * @param kind written name of the kind, e.g. "fill.started"
 * @param sentence what happened, in words and in the bench's units
 * @param hash hash of the entry
 * @param correctedBy number of the entry that corrects this one; null when it stands
 * @param signers who signed it, the first to sign first
 * @param note something to know about it, e.g. that it was advised on a bank state later corrected; null for nothing
 */
public record JournalLine(
        Entry entry,
        String kind,
        String sentence,
        String hash,
        @Nullable Long correctedBy,
        List<String> signers,
        @Nullable String note) {

    public JournalLine {
        signers = List.copyOf(signers);
    }
}
