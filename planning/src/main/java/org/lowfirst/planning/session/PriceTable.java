package org.lowfirst.planning.session;

import java.util.Arrays;

/**
 * What it costs each bottle, at given prices for the gas of every supply, to come to its stop.
 *
 * <p>Why prices bound plans. Let a stage on supply s end with the bottle at density e and gain g. At that moment the supply is at
 * or above e and has given all the gas of its stages that end at or above e before. So for every density t
 *
 * <pre>
 *   sum of g over the stages on s with e >= t  &lt;=  V_s (r_s - t)                    (1)
 * </pre>
 *
 * <p>Put a price mu(s, t) >= 0 on (1) and add up. A stage then costs g M(s, e), where M(s, e) is the sum of mu(s, t) over t &lt;=
 * e, and every plan pays at most what {@link Prices#paidAtMost} says. The cheapest way of each bottle by itself is at most what
 * it pays in any plan. (Lagrangian relaxation of the bank.)
 *
 * <p>The prices are spread evenly between levels, so M rises in straight lines and no stage is charged for less than it takes.
 * The cheapest way is found level by level and supply by supply: from a level, a stage that ends between two levels costs a
 * square in its end, plus the rest of the way, which between two levels is concave and not below its chord; the least of that
 * sum is known in closed form. The best end rises with the start (the higher the start, the less the dearer gas of a higher end
 * weighs), so a table of n levels takes about n log n such steps.
 *
 * <p>No stage ends above the density at which its supply, as it was before the session, and the bottle come to rest, nor above
 * what the bottle could come to with the whole bank to itself. The first is worked out for a bottle at the level above the one
 * it starts from, so that the costs between two levels stay bounds.
 *
 * <p>A supply that is kept must not fall below the highest stop; its gas costs 1 per mole of loss besides, (1) holds for all its
 * stages at that density, and every stage on it ends at a stop.
 */
final class PriceTable {

    private static final double NO_WAY = 1e300;
    private static final double WHOLE = 1.0 - 1e-6;
    private static final double LITTLE = 0.02;

    final Problem problem;
    final Levels levels;
    final Prices prices;

    private final double[] stop;
    private final int[] startAt;
    private final int[] stopAt;
    /** rest[b][s][j]: no stage of bottle b on supply s from level j ends above this. */
    private final double[][][] rest;
    /** cost[b][s][j]: cheapest way of bottle b from level j to its stop on supplies s and above. */
    private final double[][][] cost;
    /** Where in its cell the stage last looked at ends best, from the cell's lower level [mol/m3]. */
    private double within;

    PriceTable(Problem problem, double[] stop, boolean[] kept, Levels levels) {
        this(problem, stop, levels, new Prices(problem, kept, levels));
    }

    private PriceTable(Problem problem, double[] stop, Levels levels, Prices prices) {
        this.problem = problem;
        this.levels = levels;
        this.prices = prices;
        this.stop = stop.clone();
        cost = new double[problem.bottles][][];
        startAt = new int[problem.bottles];
        stopAt = new int[problem.bottles];
        rest = new double[problem.bottles][][];
        for (int b = 0; b < problem.bottles; b++) {
            boolean wanted = !Problem.at(problem.bottle_molPerM3[b], stop[b]);
            startAt[b] = wanted ? levels.exactly(problem.bottle_molPerM3[b]) : -1;
            stopAt[b] = wanted ? levels.exactly(stop[b]) : -1;
            cost[b] = wanted ? new double[problem.supplies + 1][levels.count()] : new double[0][];
            rest[b] = wanted ? highestEnds(b) : new double[0][];
        }
        reprice();
    }

    /** The same prices on twice as many levels. */
    PriceTable refined() {
        Levels finer = levels.halved();
        return new PriceTable(problem, stop, finer, prices.on(finer));
    }

    private double[][] highestEnds(int b) {
        double[][] ends = new double[problem.supplies][stopAt[b]];
        double alone = problem.bottle_molPerM3[b];
        for (int s = 0; s < problem.supplies; s++) {
            double r = problem.supply_molPerM3[s];
            alone = Math.max(alone, Math.min(r, problem.equal(s, r, b, alone)));
            for (int j = startAt[b]; j < stopAt[b]; j++) {
                double from = levels.at(s == 0 ? j : j + 1);
                ends[s][j] = Math.min(alone, Math.min(r, problem.equal(s, r, b, from))) * (1.0 + Problem.SLACK);
            }
        }
        return ends;
    }

    /** Works out the costs at the present prices. */
    void reprice() {
        prices.sum();
        for (int b = 0; b < problem.bottles; b++) {
            if (stopAt[b] >= 0) {
                reprice(b);
            }
        }
    }

    private void reprice(int b) {
        int goal = stopAt[b];
        double[][] table = cost[b];
        Arrays.fill(table[problem.supplies], 0, goal, NO_WAY);
        table[problem.supplies][goal] = 0.0;
        for (int s = problem.supplies - 1; s >= 0; s--) {
            System.arraycopy(table[s + 1], 0, table[s], 0, goal + 1);
            if (s == 0) {
                // no bottle is on the first supply from any other level
                bestEnds(b, s, startAt[b], startAt[b], startAt[b] + 1, goal);
            } else {
                bestEnds(b, s, startAt[b], goal - 1, startAt[b] + 1, goal);
            }
        }
    }

    /** Finds the best ends, known to be in the cells given, for starts from level {@code low} to {@code high}. */
    private void bestEnds(int b, int s, int low, int high, int firstCell, int lastCell) {
        if (low > high || firstCell > lastCell) {
            return;
        }
        int middle = (low + high) >>> 1;
        int end = bestEnd(b, s, middle, firstCell, lastCell);
        boolean found = end >= 0;
        bestEnds(b, s, low, middle - 1, firstCell, found ? end : lastCell);
        bestEnds(b, s, middle + 1, high, found ? end : firstCell, lastCell);
    }

    /** The cell in which a stage from level j ends best, -1 when there is none; lowers the cost. */
    private int bestEnd(int b, int s, int j, int firstCell, int lastCell) {
        double best = NO_WAY;
        int end = -1;
        double highest = rest[b][s][j];
        for (int cell = Math.max(firstCell, j + 1); cell <= lastCell && levels.at(cell - 1) < highest; cell++) {
            double way = ending(b, s, j, cell);
            if (way < best) {
                best = way;
                end = cell;
            }
        }
        cost[b][s][j] = Math.min(cost[b][s][j], best);
        return end;
    }

    /** Least cost of a stage from level j that ends in a cell, with the rest of the way; sets {@link #within}. */
    private double ending(int b, int s, int j, int cell) {
        double[] next = cost[b][s + 1];
        double volume = problem.bottle_m3[b];
        double lower = levels.at(cell - 1);
        double width = levels.width(cell);
        double room = Math.min(width, rest[b][s][j] - lower);
        double before = lower - levels.at(j);
        if (prices.kept(s) || next[cell - 1] >= NO_WAY) {
            // only the upper level leads on
            within = width;
            boolean leads = next[cell] < NO_WAY && (!prices.kept(s) || cell == stopAt[b]);
            return leads && room >= width * (1.0 - Problem.SLACK)
                    ? volume * (before + width) * prices.at(s, cell) + next[cell]
                    : NO_WAY;
        }
        double dearer = volume * prices.rise(s, cell);
        double slope = volume * prices.at(s, cell - 1) + dearer * before + (next[cell] - next[cell - 1]) / width;
        if (slope >= 0.0) {
            within = 0.0;
        } else {
            within = -slope >= 2.0 * dearer * room ? room : -slope / (2.0 * dearer);
        }
        return volume * before * prices.at(s, cell - 1) + next[cell - 1] + within * (slope + dearer * within);
    }

    /**
     * Least that bottle b pays from density q on supplies {@code from} and above; infinite when there is no way.
     *
     * <p>Between two levels the cost is concave in q, so the chord is a lower bound.
     */
    double pays(int b, int from, double q) {
        if (Problem.at(q, stop[b])) {
            return 0.0;
        }
        int j = levels.below(q);
        double[] here = cost[b][from];
        if (here[j] >= NO_WAY) {
            return Double.POSITIVE_INFINITY;
        }
        double share = (q - levels.at(j)) / levels.width(j + 1);
        return here[j] + share * (here[j + 1] - here[j]);
    }

    /** Gas all bottles with a stop need [mol]. */
    double need_mol() {
        return problem.need_mol(problem.bottle_molPerM3, stop);
    }

    /** What bottle b pays from its start; infinite when there is no way, 0 when it needs nothing. */
    double pays(int b) {
        if (stopAt[b] < 0) {
            return 0.0;
        }
        double least = cost[b][0][startAt[b]];
        return least >= NO_WAY ? Double.POSITIVE_INFINITY : least;
    }

    /** Adds the gas bottle b takes on its cheapest way to {@code use}, the left side of (1) as the prices weigh it. */
    void addUse(int b, double[][] use) {
        if (stopAt[b] >= 0) {
            addUse(b, 0, startAt[b], 1.0, use);
        }
    }

    /** From level j on supply {@code from}; the cheapest way from between two levels is a mixture of theirs. */
    private void addUse(int b, int from, int start, double part, double[][] use) {
        int j = start;
        double share = part;
        for (int s = from; s < problem.supplies && j != stopAt[b]; s++) {
            double passing = cost[b][s + 1][j];
            int cell = bestEnd(b, s, j, j + 1, stopAt[b]);
            if (cell < 0 || passing <= cost[b][s][j]) {
                continue;
            }
            ending(b, s, j, cell);
            double upper = within / levels.width(cell);
            prices.addUse(
                    s,
                    use[s],
                    cell,
                    upper,
                    share * problem.bottle_m3[b] * (levels.at(cell - 1) + within - levels.at(j)));
            if (upper > WHOLE) {
                j = cell;
            } else if (upper < 1.0 - WHOLE || share < LITTLE) {
                j = upper > 0.5 ? cell : cell - 1;
            } else {
                addUse(b, s + 1, cell - 1, share * (1.0 - upper), use);
                share *= upper;
                j = cell;
            }
        }
    }
}
