package org.lowfirst.planning.exchange;

/**
 * Bottles that come between order and delivery: Poisson around a mean that is itself uncertain (gamma), which together is a
 * negative binomial distribution; plain Poisson when the mean is known.
 */
final class LeadDemand {

    private final double mean;
    private final double shape;

    LeadDemand(Rate rate, double leadDays) {
        mean = rate.fillsPerDay() * leadDays;
        shape = rate.spread() == 0.0 ? Double.POSITIVE_INFINITY : 1.0 / (rate.spread() * rate.spread());
    }

    /** Chance of exactly 0, 1, 2, ... bottles, as far as it matters. */
    double[] chances() {
        int most = (int) (mean + 20.0 + 12.0 * Math.sqrt(mean + mean * mean / shape));
        double[] chances = new double[most + 1];
        boolean known = Double.isInfinite(shape);
        double p = known ? 0.0 : mean / (shape + mean);
        chances[0] = known ? Math.exp(-mean) : Math.pow(shape / (shape + mean), shape);
        for (int i = 1; i <= most; i++) {
            chances[i] = chances[i - 1] * (known ? mean / i : p * (shape + i - 1) / i);
        }
        return chances;
    }
}
