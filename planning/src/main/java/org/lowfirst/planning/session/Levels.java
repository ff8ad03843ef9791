package org.lowfirst.planning.session;

import java.util.Arrays;
import java.util.TreeSet;

/** The densities at which prices are set: every start, stop and supply, and some between, ascending. */
final class Levels {

    private static final int BINS_PER_LEVEL = 4;
    /** Levels so far below every stop make the prices near it sharper. */
    private static final double[] JUST_BELOW = {0.99, 0.999};

    private static final double NARROWEST = 1e-9;

    private final double[] level;
    /** By bin of equal width: the last level not above the bin's lower edge. */
    private final int[] bin;

    private final double binsPerDensity;

    private Levels(double[] level) {
        this.level = level;
        double width = level[level.length - 1] - level[0];
        bin = new int[BINS_PER_LEVEL * level.length + 1];
        binsPerDensity = width > 0.0 ? (bin.length - 1) / width : 0.0;
        int j = 0;
        for (int i = 1; i < bin.length; i++) {
            double edge = level[0] + i / Math.max(binsPerDensity, Double.MIN_NORMAL);
            while (j + 1 < level.length && level[j + 1] <= edge) {
                j++;
            }
            bin[i] = Math.max(0, j - 1);
        }
    }

    /**
     * @param stop by bottle, not a number for bottles left out
     * @param between about how many levels to put between lowest start and highest stop
     */
    static Levels of(Problem problem, double[] stop, int between) {
        TreeSet<Double> found = new TreeSet<>();
        for (int b = 0; b < problem.bottles; b++) {
            if (!Problem.at(problem.bottle_molPerM3[b], stop[b])) {
                found.add(problem.bottle_molPerM3[b]);
                found.add(stop[b]);
                for (double below : JUST_BELOW) {
                    found.add(Math.max(problem.bottle_molPerM3[b], stop[b] * below));
                }
            }
        }
        if (found.isEmpty()) {
            found.add(0.0);
        }
        double low = found.first();
        double high = found.last();
        for (int s = 0; s < problem.supplies; s++) {
            double r = problem.supply_molPerM3[s];
            if (r > low && r < high) {
                found.add(r);
            }
        }
        for (int i = 1; i < between; i++) {
            found.add(low + (high - low) * i / between);
        }
        return new Levels(found.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** These levels and one in the middle between every two. */
    Levels halved() {
        double[] finer = new double[2 * level.length - 1];
        for (int j = 0; j < level.length; j++) {
            finer[2 * j] = level[j];
            if (j > 0) {
                finer[2 * j - 1] = middle(j);
            }
        }
        return new Levels(finer);
    }

    /** Width of the cell below level c, c at least 1; above 0. */
    double width(int c) {
        return Math.max(level[c] - level[c - 1], NARROWEST);
    }

    /** Middle of the cell below level c; the lowest level for cell 0. */
    double middle(int c) {
        return c == 0 ? level[0] : 0.5 * (level[c - 1] + level[c]);
    }

    int count() {
        return level.length;
    }

    double at(int j) {
        return level[j];
    }

    /** Place of a density that is one of the levels. */
    int exactly(double density) {
        return Arrays.binarySearch(level, density);
    }

    /** Last level not above a density that is not below the first. */
    int below(double density) {
        int last = level.length - 1;
        if (density >= level[last]) {
            return last;
        }
        int j = bin[Math.max(0, (int) ((density - level[0]) * binsPerDensity))];
        while (level[j + 1] <= density) {
            j++;
        }
        return j;
    }
}
