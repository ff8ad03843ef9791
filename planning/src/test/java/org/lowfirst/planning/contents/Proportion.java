package org.lowfirst.planning.contents;

import org.hipparchus.stat.interval.BinomialProportion;

/** A counted share, and what it proves about the true one (Clopper and Pearson, by Hipparchus). */
record Proportion(int hits, int trials) {

    /** With 99 % confidence the true share is not above this. */
    double atMost99() {
        if (hits == 0) {
            return 1.0 - Math.pow(0.01, 1.0 / trials);
        }
        return hits == trials
                ? 1.0
                : BinomialProportion.getClopperPearsonInterval(trials, share(), 0.98)
                        .getUpperBound();
    }

    /** With 99 % confidence the true share is not below this. */
    double atLeast99() {
        if (hits == trials) {
            return Math.pow(0.01, 1.0 / trials);
        }
        return hits == 0
                ? 0.0
                : BinomialProportion.getClopperPearsonInterval(trials, share(), 0.98)
                        .getLowerBound();
    }

    double share() {
        return (double) hits / trials;
    }

    @Override
    public String toString() {
        return "%d of %d (99 %% bounds %.4f to %.4f)".formatted(hits, trials, atLeast99(), atMost99());
    }
}
