package org.lowfirst.planning.study.kernel;

import java.util.Arrays;

/**
 * Counts positive values in steps of one hundredth of their size, so that percentiles come out within half a percent whatever
 * the number of values. Adding two counts gives the same answer in any order. Mutable, used by one thread.
 */
public final class Percentiles {

    private static final double LOWEST = 1e-6;
    private static final double STEP = Math.log(1.01);
    private static final int STEPS = (int) Math.ceil(Math.log(1e18) / STEP);

    private final long[] counts = new long[STEPS];
    private long total;

    /** Counts a value from 1e-6 to 1e12; what is beyond is counted at the end it is beyond. */
    public void add(double value) {
        double place = Math.log(Math.max(value, LOWEST) / LOWEST) / STEP;
        counts[(int) Math.min(place, STEPS - 1.0)]++;
        total++;
    }

    public void add(Percentiles other) {
        for (int i = 0; i < STEPS; i++) {
            counts[i] += other.counts[i];
        }
        total += other.total;
    }

    public long total() {
        return total;
    }

    /**
     * The value that this share of all values does not exceed, within half a percent.
     *
     * @param share 0 to 1
     */
    public double at(double share) {
        long wanted = Math.max(1, (long) Math.ceil(share * total));
        long seen = 0;
        for (int i = 0; i < STEPS; i++) {
            seen += counts[i];
            if (seen >= wanted) {
                return LOWEST * Math.exp((i + 0.5) * STEP);
            }
        }
        throw new IllegalArgumentException("There must be at least one value.");
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Percentiles p && Arrays.equals(counts, p.counts);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(counts);
    }
}
