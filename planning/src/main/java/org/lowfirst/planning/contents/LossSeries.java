package org.lowfirst.planning.contents;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The readings of one cylinder in order of time, watched for what noise cannot explain.
 *
 * <p>A scalar filter follows what the gauge says about the contents, so that a lasting error of the gauge drops out. Beside
 * it run the signatures of a leak from each earlier reading on, of a sudden change in each interval, of each reading being
 * misread, and of a wrong water volume. Mutable, confined to its owner.
 */
final class LossSeries {

    private static final double SECONDS_PER_DAY = 86_400.0;

    /** No reading counts as more than four standard deviations of scatter: one misread number is not a shaky gauge. */
    private static final double MOST_SQUARES = 16.0;

    private final ContentsAssumptions assumptions;
    private final List<ContentsMeasurement> readings = new ArrayList<>();
    private final List<Interval> intervals = new ArrayList<>();
    private final SignatureFamily leaks;
    private final SignatureFamily steps;
    private final SignatureFamily misreads;
    private final Map<String, Signature> partnerVolumes = new TreeMap<>();
    private final Signature ownVolume = new Signature(0);

    private double level_mol;
    private double variance_mol2;
    private double innovation_mol;
    private double innovationVariance_mol2 = Double.NaN;
    private double squares;
    private int innovations;
    private int changes;

    private double moved_mol;
    private double movedVariance_mol2;
    private boolean movedUnknown;
    private List<String> partners = new ArrayList<>();
    private final Map<String, Double> lastingTotals = new HashMap<>();

    /** Time between two readings. */
    record Interval(Instant from, Instant to, List<String> partners) {
        Interval {
            partners = List.copyOf(partners);
        }

        /** Whether a stage was recorded in it. */
        boolean open() {
            return !partners.isEmpty();
        }

        boolean overlaps(Interval other) {
            return from.isBefore(other.to) && other.from.isBefore(to);
        }
    }

    LossSeries(ContentsAssumptions assumptions) {
        this.assumptions = assumptions;
        int window = assumptions.verdicts().windowReadings();
        leaks = new SignatureFamily(window);
        steps = new SignatureFamily(window);
        misreads = new SignatureFamily(window);
    }

    /** A stage took gas to a bottle, as the bottle's readings say. */
    void gave(EnteredBottle entered) {
        changes++;
        double amount_mol = entered.amount_mol();
        moved_mol -= amount_mol;
        movedVariance_mol2 += entered.variance_mol2() + lastingVariance(entered);
        partners.add(entered.bottle());
        partnerVolumes
                .computeIfAbsent(entered.bottle(), name -> new Signature(0))
                .insert(-amount_mol);
        ownVolume.insert(amount_mol);
    }

    /**
     * What the errors that come back with every stage (the two volumes, the rule of thumb for warm gas) add to the variance of
     * all the gas given so far. They do not average out, so the variance grows as the square of the total [mol2].
     */
    private double lastingVariance(EnteredBottle entered) {
        double added = 0.0;
        for (EnteredBottle.Lasting lasting : entered.lasting()) {
            double before_mol = lastingTotals.getOrDefault(lasting.cause(), 0.0);
            double after_mol = before_mol + lasting.deviation_mol();
            lastingTotals.put(lasting.cause(), after_mol);
            added += square(after_mol) - square(before_mol);
        }
        return added;
    }

    /** A stage moved an amount nobody knows; the contents are taken up afresh at the next reading. */
    void movedUnknown(String partner) {
        changes++;
        movedUnknown = true;
        partners.add(partner);
    }

    /** The next reading, not before the last. */
    void read(ContentsMeasurement next) {
        changes++;
        if (readings.isEmpty()) {
            begin(next);
        } else {
            advance(next);
        }
        readings.add(next);
        leaks.begin(readings.size() - 1);
        steps.begin(readings.size() - 1);
        moved_mol = 0.0;
        movedVariance_mol2 = 0.0;
        movedUnknown = false;
        partners = new ArrayList<>();
    }

    private void begin(ContentsMeasurement next) {
        level_mol = next.amount_mol();
        variance_mol2 = next.changingVariance_mol2();
        partnerVolumes.clear();
        ownVolume.restart();
    }

    private void advance(ContentsMeasurement next) {
        ContentsMeasurement last = readings.get(readings.size() - 1);
        double days = Duration.between(last.reading().at(), next.reading().at()).toMillis() / 1000.0 / SECONDS_PER_DAY;
        intervals.add(new Interval(last.reading().at(), next.reading().at(), partners));
        leaks.members().forEach(leak -> leak.insert(-level_mol * days));
        steps.members().get(steps.members().size() - 1).insert(-1.0);
        if (movedUnknown) {
            restartFrom(next);
            return;
        }
        level_mol += moved_mol;
        variance_mol2 += movedVariance_mol2 + wander(last, next, days);
        misreads.begin(readings.size()).misread(1.0);
        update(next);
    }

    private void restartFrom(ContentsMeasurement next) {
        level_mol = next.amount_mol();
        variance_mol2 = next.changingVariance_mol2();
        innovation_mol = 0.0;
        innovationVariance_mol2 = Double.NaN;
        leaks.restart();
        steps.restart();
        misreads.restart();
        partnerVolumes.values().forEach(Signature::restart);
        ownVolume.restart();
    }

    private void update(ContentsMeasurement next) {
        double S = variance_mol2 + next.changingVariance_mol2();
        double gain = variance_mol2 / S;
        double nu = next.amount_mol() - level_mol;
        leaks.read(nu, S, gain);
        steps.read(nu, S, gain);
        misreads.read(nu, S, gain);
        partnerVolumes.values().forEach(volume -> volume.read(nu, S, gain));
        ownVolume.read(nu, S, gain);
        innovation_mol = nu;
        innovationVariance_mol2 = S;
        squares += Math.min(nu * nu / S, MOST_SQUARES);
        innovations++;
        level_mol += gain * nu;
        variance_mol2 *= 1.0 - gain;
    }

    /** Variance of what an honest cylinder and gauge may wander between two readings [mol2]. */
    private double wander(ContentsMeasurement last, ContentsMeasurement next, double days) {
        double along_mol = EnteredBottle.along_mol(last, next);
        double ordinary_mol = assumptions.filter().ordinaryLossShare() * level_mol;
        double otherGauge_mol2 = last.reading().gauge().equals(next.reading().gauge())
                ? 0.0
                : square(last.offset_mol()) + square(next.offset_mol());
        return square(along_mol) + square(ordinary_mol) * days + otherGauge_mol2;
    }

    private static double square(double x) {
        return x * x;
    }

    /** How often it went on; what was worked out from it holds until that grows. */
    int changes() {
        return changes;
    }

    /** Index of the last reading. */
    int lastIndex() {
        return readings.size() - 1;
    }

    /** Whether an amount nobody knows moved since the last reading. */
    boolean hasUnknownMove() {
        return movedUnknown;
    }

    boolean isEmpty() {
        return readings.isEmpty();
    }

    ContentsMeasurement last() {
        return readings.get(readings.size() - 1);
    }

    ContentsMeasurement reading(int index) {
        return readings.get(index);
    }

    /** The interval that begins with a reading. */
    Interval intervalAfter(int reading) {
        return intervals.get(reading);
    }

    /**
     * By what factor the readings scatter more than assumed, given an explanation: mean square of what it leaves of the
     * innovations over their standard deviations, the assumption counting as some readings. Never below 1.
     *
     * @param z size of the explanation over its standard deviation, as assumed
     */
    double scatterFactor(double z) {
        double prior = assumptions.verdicts().scatterReadings();
        double left = Math.max(0.0, squares - z * z);
        return Math.sqrt(Math.max(1.0, (prior + left) / (prior + Math.max(0, innovations - 1))));
    }

    SignatureFamily leaks() {
        return leaks;
    }

    SignatureFamily steps() {
        return steps;
    }

    SignatureFamily misreads() {
        return misreads;
    }

    Map<String, Signature> partnerVolumes() {
        return partnerVolumes;
    }

    Signature ownVolume() {
        return ownVolume;
    }

    /** Estimate of what the gauge says about the contents [mol], the lasting error of the gauge included. */
    double level() {
        return level_mol;
    }

    /** What the last reading was off its forecast [mol]. */
    double innovation() {
        return innovation_mol;
    }

    /** Variance of that [mol2]; NaN when there was no forecast. */
    double innovationVariance() {
        return innovationVariance_mol2;
    }
}
