package org.lowfirst.station;

/**
 * Key of an entry, made by the client that sends it: two sends with one key are one entry.
 *
 * @param value 1 to 64 letters, digits, points, dashes or underscores
 */
public record EntryKey(String value) {

    public EntryKey {
        IdText.checked("entry key", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
