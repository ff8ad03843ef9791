package org.lowfirst.planning.contents;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.lowfirst.gas.GaugePressure;

/**
 * Kalman filter of one bench: the contents of every cylinder [mol] and the lasting error of every gauge [Pa], with all their
 * covariances. A stage ties supply and bottle together, a gauge ties all cylinders it was read on. Mutable, confined to its
 * owner.
 */
final class BenchFilter {

    private static final double SECONDS_PER_DAY = 86_400.0;
    private static final double DAYS_PER_YEAR = 365.25;

    private final ContentsAssumptions assumptions;
    private final GaussianState state = new GaussianState();
    private final Map<String, Integer> cylinders = new LinkedHashMap<>();
    private final Map<String, Integer> gauges = new LinkedHashMap<>();
    private final Map<String, Instant> passed = new HashMap<>();
    private final Map<String, Instant> driftedTo = new HashMap<>();

    BenchFilter(ContentsAssumptions assumptions) {
        this.assumptions = assumptions;
    }

    boolean knows(String cylinder) {
        return cylinders.containsKey(cylinder);
    }

    /** Takes up a cylinder of which nothing but this reading is known; forgets what was known about it. */
    void start(Gauge gauge, ContentsMeasurement m) {
        int b = gaugeIndex(gauge, m);
        int n = cylinders.computeIfAbsent(m.reading().cylinder(), name -> state.add(0.0, 0.0));
        state.replaceBy(n, m.amount_mol(), b, -m.molesPerPascal(), m.changingVariance_mol2());
        passed.put(m.reading().cylinder(), m.reading().at());
    }

    /**
     * Corrects by a reading.
     *
     * @return how many standard deviations it was off its forecast
     */
    double read(Gauge gauge, ContentsMeasurement m) {
        int b = gaugeIndex(gauge, m);
        int n = indexAt(m.reading().cylinder(), m.reading().at());
        double surprise = believe(n, b, m);
        state.correct(
                new int[] {n, b}, new double[] {1.0, m.molesPerPascal()}, m.amount_mol(), m.changingVariance_mol2());
        return surprise;
    }

    /** Widens an estimate that a reading surprises, so that the reading wins; how many standard deviations it was off. */
    private double believe(int n, int b, ContentsMeasurement m) {
        int[] at = {n, b};
        double[] by = {1.0, m.molesPerPascal()};
        double surprise = state.surprise(at, by, m.amount_mol(), m.changingVariance_mol2());
        if (Math.abs(surprise) > assumptions.filter().surprise()) {
            double off_mol = m.amount_mol() - state.forecast(at, by);
            state.widen(n, off_mol * off_mol);
        }
        return surprise;
    }

    /** Forgets a cylinder. */
    void forget(String cylinder) {
        cylinders.remove(cylinder);
        passed.remove(cylinder);
    }

    /**
     * Moves gas from supply to bottle.
     *
     * @param moved expected amount [mol]
     * @param deviation standard deviation of it [mol]
     */
    void stage(String supply, String bottle, Instant at, double moved, double deviation) {
        state.move(indexAt(supply, at), indexAt(bottle, at), moved, deviation * deviation);
    }

    /**
     * Corrects by the two readings at the end of a stage that ended equal: two amounts, and one pressure seen by two gauges.
     *
     * @return how many standard deviations the supply's and the bottle's reading were off their forecasts
     */
    double[] readEqual(Gauge supplyGauge, ContentsMeasurement supply, Gauge bottleGauge, ContentsMeasurement bottle) {
        int bs = gaugeIndex(supplyGauge, supply);
        int bb = gaugeIndex(bottleGauge, bottle);
        int ns = indexAt(supply.reading().cylinder(), supply.reading().at());
        int nb = indexAt(bottle.reading().cylinder(), bottle.reading().at());
        double[] surprises = {believe(ns, bs, supply), believe(nb, bb, bottle)};
        double rs = square(supply.gauge().repeat_Pa());
        double rb = square(bottle.gauge().repeat_Pa());
        double as = supply.molesPerPascal();
        double ab = bottle.molesPerPascal();
        double[][] rows = {{1.0, 0.0, as, 0.0}, {0.0, 1.0, 0.0, ab}, {0.0, 0.0, -1.0, 1.0}};
        double[][] noise = {
            {supply.changingVariance_mol2(), 0.0, -as * rs},
            {0.0, bottle.changingVariance_mol2(), ab * rb},
            {-as * rs, ab * rb, rs + rb}
        };
        double[] measured = {
            supply.amount_mol(),
            bottle.amount_mol(),
            (bottle.shown().pascals() - bottleGauge.expectedOffset_Pa())
                    - (supply.shown().pascals() - supplyGauge.expectedOffset_Pa())
        };
        CorrelatedRows.correct(state, new int[] {ns, nb, bs, bb}, rows, measured, noise);
        return surprises;
    }

    ContentsEstimate contents(String cylinder) {
        int n = cylinders.getOrDefault(cylinder, -1);
        if (n < 0) {
            throw new IllegalArgumentException("The cylinder (" + cylinder + ") must have been read.");
        }
        return new ContentsEstimate(state.mean(n), Math.sqrt(state.variance(n)));
    }

    Set<String> cylinders() {
        return cylinders.keySet();
    }

    /** What is known about the lasting errors of the gauges, on top of what they came with. */
    Map<String, GaugeOffset> offsets(Map<String, Gauge> known) {
        Map<String, GaugeOffset> all = new LinkedHashMap<>();
        gauges.forEach((name, b) -> {
            Gauge gauge = known.get(name);
            double before_Pa = gauge == null ? 0.0 : gauge.expectedOffset_Pa();
            all.put(
                    name,
                    new GaugeOffset(
                            new GaugePressure(before_Pa + state.mean(b)),
                            new GaugePressure(Math.sqrt(state.variance(b)))));
        });
        return all;
    }

    GaussianState state() {
        return state;
    }

    /** Index of a cylinder, its estimate brought to a time: it may have lost a little unnoticed. */
    private int indexAt(String cylinder, Instant at) {
        Integer n = cylinders.get(cylinder);
        if (n == null) {
            throw new IllegalArgumentException("The cylinder (" + cylinder + ") must have been read.");
        }
        Instant before = passed.put(cylinder, at);
        if (before != null && before.isBefore(at)) {
            double loss_mol = assumptions.filter().ordinaryLossShare() * state.mean(n);
            state.widen(n, loss_mol * loss_mol * days(before, at));
        }
        return n;
    }

    private int gaugeIndex(Gauge gauge, ContentsMeasurement m) {
        Instant at = m.reading().at();
        int b = gauges.computeIfAbsent(
                gauge.name(), name -> state.add(0.0, square(m.gauge().offset_Pa())));
        Instant before = driftedTo.put(gauge.name(), at);
        if (before != null && before.isBefore(at)) {
            double perRootYear_Pa =
                    assumptions.gauges().driftShare() * gauge.limit().pascals();
            state.widen(b, square(perRootYear_Pa) * days(before, at) / DAYS_PER_YEAR);
        }
        return b;
    }

    private static double days(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 1000.0 / SECONDS_PER_DAY;
    }

    private static double square(double x) {
        return x * x;
    }
}
