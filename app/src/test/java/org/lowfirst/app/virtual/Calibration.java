package org.lowfirst.app.virtual;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.contents.FillSpread.Spread;

/** How often what was seen lay within what was stated, one look per fill. */
final class Calibration {

    /** Half-widths that a normal distribution fills with 50, 80 and 95 % [standard deviations]. */
    private static final double[] HALF_WIDTHS = {0.674490, 1.281552, 1.959964};

    static final int[] NOMINAL = {50, 80, 95};

    private final String what;
    private final List<Double> deviations = new ArrayList<>();

    Calibration(String what) {
        this.what = what;
    }

    void add(GaugePressure seen, Spread stated) {
        deviations.add((seen.pascals() - stated.expected().pascals())
                / stated.standardDeviation().pascals());
    }

    int looks() {
        return deviations.size();
    }

    /** How many lay within the interval of that nominal confidence. */
    int within(int index) {
        return (int) deviations.stream()
                .filter(z -> Math.abs(z) <= HALF_WIDTHS[index])
                .count();
    }

    /** Chance that so few, or fewer, lie within when the stated confidence is true. */
    double chanceOfSoFew(int index) {
        return new BinomialDistribution(looks(), NOMINAL[index] / 100.0).cumulativeProbability(within(index));
    }

    /** One line of the table in the documents. */
    String row() {
        StringBuilder row = new StringBuilder("| " + what + " | " + looks());
        for (int i = 0; i < NOMINAL.length; i++) {
            row.append(String.format(Locale.ROOT, " | %.1f", 100.0 * within(i) / looks()));
        }
        double mean = deviations.stream().mapToDouble(z -> z).average().orElseThrow();
        return row.append(String.format(Locale.ROOT, " | %+.2f |", mean)).toString();
    }
}
