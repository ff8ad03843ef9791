package org.lowfirst.app.virtual;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.contents.FillSpread.Spread;

/** How often what was seen lay within what was stated, one look per fill. */
final class Calibration {

    static final int[] NOMINAL = {50, 80, 95};

    private final String what;
    private final List<Double> deviations = new ArrayList<>();
    private final int[] within = new int[NOMINAL.length];

    Calibration(String what) {
        this.what = what;
    }

    void add(GaugePressure seen, Spread stated) {
        deviations.add((seen.pascals() - stated.expected().pascals())
                / stated.standardDeviation().pascals());
        double off_Pa = Math.abs(seen.pascals() - stated.expected().pascals());
        for (int i = 0; i < NOMINAL.length; i++) {
            within[i] += off_Pa <= stated.within(NOMINAL[i] / 100.0).pascals() ? 1 : 0;
        }
    }

    int looks() {
        return deviations.size();
    }

    /** How many lay within the interval of that nominal confidence. */
    int within(int index) {
        return within[index];
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
