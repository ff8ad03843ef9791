package org.lowfirst.planning.contents;

import org.lowfirst.gas.GaugePressure;

/**
 * Two gauges on one pressure.
 *
 * @param difference first less second, as shown
 * @param allowed what both limits together allow
 * @param scatter standard deviation of the difference of two readings
 * @param chanceOfNoise largest chance, over all lasting errors within both limits, of a difference at least this large
 */
public record GaugePair(GaugePressure difference, GaugePressure allowed, GaugePressure scatter, double chanceOfNoise) {

    /**
     * @param first gauge and what it showed
     * @param second gauge and what it showed at the same time on the same pressure
     */
    public static GaugePair compare(
            Gauge first,
            GaugePressure firstShown,
            Gauge second,
            GaugePressure secondShown,
            ContentsAssumptions assumptions) {
        GaugeAssumptions a = assumptions.gauges();
        double difference_Pa = firstShown.pascals() - secondShown.pascals();
        double allowed_Pa = first.limit().pascals() + second.limit().pascals();
        double scatter_Pa = Math.hypot(first.repeat_Pa(a), second.repeat_Pa(a));
        double beyond_Pa = Math.abs(difference_Pa) - allowed_Pa;
        double beyondOther_Pa = Math.abs(difference_Pa) + allowed_Pa;
        double chance = Gaussian.above(beyond_Pa / scatter_Pa) + Gaussian.above(beyondOther_Pa / scatter_Pa);
        return new GaugePair(
                new GaugePressure(difference_Pa),
                new GaugePressure(allowed_Pa),
                new GaugePressure(scatter_Pa),
                Math.min(1.0, chance));
    }

    /** Whether the difference is more than both gauges may err. */
    public boolean disagrees(VerdictThresholds thresholds) {
        return chanceOfNoise <= thresholds.likelyChance();
    }
}
