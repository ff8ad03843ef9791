package org.lowfirst.planning.contents;

import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import org.lowfirst.gas.GaugePressure;

/**
 * A timed leak check: pressure and temperature recorded, held, recorded again; the temperature taken out by the real-gas
 * equation.
 *
 * @param outcome passed, failed, or no check at all
 * @param spoiledBy what keeps it from being a check; empty unless {@link Outcome#NO_CHECK}
 * @param dropAsRead first reading less second
 * @param drop what the second reading falls short of what the first comes to at the second temperature
 * @param standardDeviation of that drop
 * @param limits the limits it was held to
 * @param temperatureChange_K second temperature less first [K]
 * @param held time between the readings
 * @param chanceOfNoise chance that a tight cylinder shows at least this drop; small although passed means: watch it
 */
public record TimedLeakCheck(
        Outcome outcome,
        Set<SpoiledBy> spoiledBy,
        GaugePressure dropAsRead,
        GaugePressure drop,
        GaugePressure standardDeviation,
        LeakCheckLimits limits,
        double temperatureChange_K,
        Duration held,
        double chanceOfNoise) {

    /** What came of it. */
    public enum Outcome {
        /** The drop, temperature taken out, is within the limit. */
        PASSED,
        /** It is beyond the limit. */
        FAILED,
        /** The conditions were not kept; the numbers are given all the same. */
        NO_CHECK
    }

    /** What spoils a check. */
    public enum SpoiledBy {
        SETTLED_TOO_SHORT,
        HELD_TOO_SHORT,
        TEMPERATURE_CHANGED_TOO_MUCH,
        /** Gas still warm or cold, or its temperature not measured. */
        TEMPERATURE_NOT_MEASURED,
        OTHER_GAUGE,
        /** Two standard deviations of the drop are more than the limit. */
        GAUGE_TOO_COARSE,
        /** It reads more than it can. */
        READS_HIGHER_THAN_POSSIBLE
    }

    public TimedLeakCheck {
        spoiledBy = Collections.unmodifiableSet(new TreeSet<>(spoiledBy));
    }

    /**
     * @param cylinder the cylinder, valve open to what is tested, nothing drawn
     * @param settledSince when it was last filled, opened or moved
     * @param first first reading
     * @param second second reading
     */
    public static TimedLeakCheck judge(
            MeteredCylinder cylinder,
            Instant settledSince,
            ContentsMeasurement first,
            ContentsMeasurement second,
            LeakCheckLimits limits,
            Surroundings surroundings,
            VerdictThresholds thresholds) {
        double missing_mol = first.amount_mol() - second.amount_mol();
        GaugePressure expected = new ShownPressure(surroundings).after(cylinder, second, missing_mol);
        double along_mol = EnteredBottle.along_mol(first, second);
        double deviation_mol =
                Math.sqrt(first.changingVariance_mol2() + second.changingVariance_mol2() + along_mol * along_mol);
        double deviation_Pa = deviation_mol / second.molesPerPascal();
        double drop_Pa = expected.pascals() - second.shown().pascals();
        double z = missing_mol / deviation_mol;
        Duration held = Duration.between(first.reading().at(), second.reading().at());
        Set<SpoiledBy> spoiled = conditions(settledSince, first, second, limits);
        if (2.0 * deviation_Pa > limits.mostDrop().pascals()) {
            spoiled.add(SpoiledBy.GAUGE_TOO_COARSE);
        }
        if (Gaussian.above(-z) <= thresholds.watchChance()) {
            spoiled.add(SpoiledBy.READS_HIGHER_THAN_POSSIBLE);
        }
        return new TimedLeakCheck(
                outcome(spoiled, drop_Pa, limits),
                spoiled,
                new GaugePressure(first.shown().pascals() - second.shown().pascals()),
                new GaugePressure(drop_Pa),
                new GaugePressure(deviation_Pa),
                limits,
                kelvin(second) - kelvin(first),
                held,
                Gaussian.above(z));
    }

    private static Outcome outcome(Set<SpoiledBy> spoiled, double drop_Pa, LeakCheckLimits limits) {
        if (!spoiled.isEmpty()) {
            return Outcome.NO_CHECK;
        }
        return drop_Pa > limits.mostDrop().pascals() ? Outcome.FAILED : Outcome.PASSED;
    }

    private static Set<SpoiledBy> conditions(
            Instant settledSince, ContentsMeasurement first, ContentsMeasurement second, LeakCheckLimits limits) {
        Set<SpoiledBy> spoiled = EnumSet.noneOf(SpoiledBy.class);
        Instant begun = first.reading().at();
        if (Duration.between(settledSince, begun).compareTo(limits.settle()) < 0) {
            spoiled.add(SpoiledBy.SETTLED_TOO_SHORT);
        }
        if (Duration.between(begun, second.reading().at()).compareTo(limits.hold()) < 0) {
            spoiled.add(SpoiledBy.HELD_TOO_SHORT);
        }
        if (Math.abs(kelvin(second) - kelvin(first)) >= limits.temperatureChangeBelow_K()) {
            spoiled.add(SpoiledBy.TEMPERATURE_CHANGED_TOO_MUCH);
        }
        if (!measured(first) || !measured(second)) {
            spoiled.add(SpoiledBy.TEMPERATURE_NOT_MEASURED);
        }
        if (!first.reading().gauge().equals(second.reading().gauge())) {
            spoiled.add(SpoiledBy.OTHER_GAUGE);
        }
        return spoiled;
    }

    private static boolean measured(ContentsMeasurement m) {
        return m.reading().temperature().known() == GasTemperature.Known.MEASURED;
    }

    private static double kelvin(ContentsMeasurement m) {
        return m.reading().temperature().value().kelvin();
    }
}
