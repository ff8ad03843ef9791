package org.lowfirst.planning.contents;

import java.time.Duration;

/** How small a leak the readings of one supply can show. */
public final class LeakSensitivity {

    /** Quantile at 0.99, handbook tables print 2.326. */
    private static final double ONE_SIDED_99 = 2.3263478740408408;

    private static final int HALVINGS = 60;

    private final ContentsAssumptions assumptions;

    public LeakSensitivity(ContentsAssumptions assumptions) {
        this.assumptions = assumptions;
    }

    /**
     * The smallest leak that is named with at least 90 % chance at the last of the readings, as a share of the contents lost
     * each day. The margin is that of 99 %; some are lost to the naming of another cause and to series
     * that scatter more than assumed.
     *
     * @param typical a typical reading of the supply, with its gauge and thermometer
     * @param readingsBefore readings before the leak begins, at least 1
     * @param readingsAfter readings after it began, at least 1
     * @param apart time between readings, above zero
     */
    public double smallestNamed(ContentsMeasurement typical, int readingsBefore, int readingsAfter, Duration apart) {
        if (readingsBefore < 1 || readingsAfter < 1 || apart.isNegative() || apart.isZero()) {
            throw new IllegalArgumentException("The readings before (" + readingsBefore + ") and after ("
                    + readingsAfter + ") must be at least 1 and the time between (" + apart + ") above zero.");
        }
        LossSeries series = new LossSeries(assumptions);
        for (int i = 0; i < readingsBefore + readingsAfter; i++) {
            series.read(later(typical, apart.multipliedBy(i)));
        }
        Signature leak = series.leaks().members().stream()
                .filter(member -> member.since == readingsBefore - 1)
                .findFirst()
                .orElseThrow();
        double needed = quantile(series.leaks()) + ONE_SIDED_99;
        return needed * leak.sizeDeviation();
    }

    private static ContentsMeasurement later(ContentsMeasurement m, Duration by) {
        GaugeReading r = m.reading();
        return new ContentsMeasurement(
                new GaugeReading(r.at().plus(by), r.cylinder(), r.gauge(), r.shown(), r.temperature()),
                m.amount_mol(),
                m.molesPerPascal(),
                m.molesPerKelvin(),
                m.gauge());
    }

    /** The strength at which the chance of noise falls to what names a cause. */
    private double quantile(SignatureFamily family) {
        double low = 0.0;
        double high = 40.0;
        for (int i = 0; i < HALVINGS; i++) {
            double mid = 0.5 * (low + high);
            if (family.chanceAbove(mid) > assumptions.verdicts().likelyChance()) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return high;
    }
}
