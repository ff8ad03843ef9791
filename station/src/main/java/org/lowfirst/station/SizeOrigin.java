package org.lowfirst.station;

/**
 * Where the figures of a size come from.
 *
 * @param source key of the source, explained at the top of sizes.csv
 */
public record SizeOrigin(String source, Status status) {

    /** How far the figures were checked. */
    public enum Status {
        /** Read in the source named. */
        READ,
        /** Remembered, not read again: approximate. */
        REMEMBERED,
        /** Follows from the water volume by the real gas. */
        COMPUTED
    }
}
