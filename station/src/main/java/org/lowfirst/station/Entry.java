package org.lowfirst.station;

/**
 * One fact in the journal of a bench.
 *
 * @param seq its number in the journal, from 1, without gaps
 */
public record Entry(BenchId bench, long seq, Origin origin, Fact fact) {

    public Entry {
        if (seq < 1) {
            throw new IllegalArgumentException("The sequence number (" + seq + ") must be at least 1.");
        }
    }
}
