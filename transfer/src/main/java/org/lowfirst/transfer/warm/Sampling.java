package org.lowfirst.transfer.warm;

/**
 * How long to look and how often to note.
 *
 * @param interval_s time between two points of the series [s], above 0
 * @param longest_s when to give up [s], above 0
 */
public record Sampling(double interval_s, double longest_s) {

    public Sampling {
        if (!(interval_s > 0.0) || !(longest_s > 0.0) || Double.isInfinite(longest_s)) {
            throw new IllegalArgumentException("The interval (" + interval_s + " s) and the longest time (" + longest_s
                    + " s) must be above 0 and finite.");
        }
    }
}
