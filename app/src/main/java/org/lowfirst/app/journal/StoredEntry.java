package org.lowfirst.app.journal;

import org.lowfirst.station.Entry;

/**
 * An entry as it stands in the journal.
 *
 * @param kind written name of the fact's kind
 * @param version version the payload was written in
 * @param payload the fact as canonical JSON, in the version it was written in
 * @param previous hash of the entry before, 64 zeros for the first
 * @param hash SHA-256 over all of the above, lower-case hexadecimal
 */
public record StoredEntry(Entry entry, String kind, int version, String payload, String previous, String hash) {

    /** The entry as one line of an export, without a line end. */
    public String toLine() {
        return EntryText.line(this, true);
    }
}
