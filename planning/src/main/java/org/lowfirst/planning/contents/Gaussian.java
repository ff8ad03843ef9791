package org.lowfirst.planning.contents;

import org.hipparchus.special.Erf;

/** The standard normal distribution. */
final class Gaussian {

    /** Quantile at 0.975, handbook tables print 1.96. */
    static final double TWO_SIDED_95 = 1.959963984540054;

    private Gaussian() {}

    /** Density at {@code z}. */
    static double density(double z) {
        return Math.exp(-0.5 * z * z) / Math.sqrt(2.0 * Math.PI);
    }

    /** Chance of a value above {@code z}; keeps its relative accuracy far out in the tail. */
    static double above(double z) {
        return 0.5 * Erf.erfc(z / Math.sqrt(2.0));
    }

    /** Chance of a value at least this far from the middle, either side. */
    static double beyond(double z) {
        return Math.min(1.0, 2.0 * above(Math.abs(z)));
    }
}
