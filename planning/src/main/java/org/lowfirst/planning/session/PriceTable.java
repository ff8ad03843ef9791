package org.lowfirst.planning.session;

import java.util.Arrays;

/**
 * Prices for the gas of every supply, and what it costs each bottle at these prices to come to its stop.
 *
 * <p>Why prices bound plans. Let a stage on supply s end with the bottle at level e and gain g. At that moment the supply is at
 * or above e and has given all the gas of its stages that end at or above e before. So for every level t
 *
 * <pre>
 *   sum of g over the stages on s with e >= t  &lt;=  V_s (r_s - t)                    (1)
 * </pre>
 *
 * <p>Put a price mu(s, t) >= 0 on (1). A stage then costs g M(s, e), M(s, e) = sum of mu(s, t) over t &lt;= e, and every plan pays
 * at most sum of mu(s, t) V_s (r_s - t) in all. The cheapest way of each bottle by itself, found level by level and supply by
 * supply, is at most what it pays in any plan. (Lagrangian relaxation of the bank; an end between two levels is charged as the
 * lower one, and is then best just below the upper one. That holds for the stop too: just below it a later supply finishes the
 * bottle at no cost.)
 *
 * <p>No stage ends above the level at which its supply, as it was before the session, and the bottle come to rest; that is
 * worked out for a bottle at the level above the one it starts from, so that the costs between two levels stay bounds.
 *
 * <p>A supply that is kept must not fall below the highest stop; its gas costs 1 per mole of loss besides, and (1) holds for all
 * its stages at that level.
 */
final class PriceTable {

    private static final double NO_WAY = 1e300;
    private static final int PASS = -1;
    private static final int ALMOST = -2;

    final Problem problem;
    final Levels levels;
    final boolean[] kept;
    /** mu[s][t]; a kept supply has its one price at 0. */
    final double[][] mu;

    private final double[] stop;
    private final int[] stopAt;
    /** endAt[b][s][j]: highest level at which a stage of bottle b on supply s from level j may be counted to end. */
    private final int[][][] endAt;

    private final double[][] upTo;
    private final double[][] levelTimesMu;
    /** cost[b][s][j]: cheapest way of bottle b from level j to its stop on supplies s and above. */
    private final double[][][] cost;

    PriceTable(Problem problem, double[] stop, boolean[] kept, Levels levels) {
        this.problem = problem;
        this.levels = levels;
        this.kept = kept.clone();
        this.stop = stop.clone();
        mu = new double[problem.supplies][levels.count()];
        upTo = new double[problem.supplies][levels.count()];
        levelTimesMu = new double[problem.supplies][levels.count()];
        cost = new double[problem.bottles][][];
        stopAt = new int[problem.bottles];
        endAt = new int[problem.bottles][][];
        for (int b = 0; b < problem.bottles; b++) {
            boolean wanted = !Problem.at(problem.bottle_molPerM3[b], stop[b]);
            stopAt[b] = wanted ? levels.exactly(stop[b]) : -1;
            cost[b] = wanted ? new double[problem.supplies + 1][levels.count()] : new double[0][];
            endAt[b] = wanted ? highestEnds(b) : new int[0][];
        }
        reprice();
    }

    private int[][] highestEnds(int b) {
        int[][] ends = new int[problem.supplies][stopAt[b]];
        for (int s = 0; s < problem.supplies; s++) {
            double r = problem.supply_molPerM3[s];
            for (int j = 0; j < stopAt[b]; j++) {
                double rest = problem.equal(s, r, b, levels.at(j + 1));
                int end = j + 1;
                while (end < stopAt[b] && levels.at(end) <= Math.min(r, rest * (1.0 + Problem.SLACK))) {
                    end++;
                }
                ends[s][j] = end;
            }
        }
        return ends;
    }

    /** Whether a stage of bottle b on supply s from level j may bring it to its stop. */
    private boolean reaches(int b, int s, int j) {
        double rest = problem.equal(s, problem.supply_molPerM3[s], b, levels.at(j + 1));
        return levels.at(stopAt[b]) <= rest * (1.0 + Problem.SLACK);
    }

    /** Works out the costs at the present prices. */
    void reprice() {
        for (int s = 0; s < problem.supplies; s++) {
            double sum = 0.0;
            double weighted = 0.0;
            for (int t = 0; t < levels.count(); t++) {
                sum += mu[s][t];
                weighted += mu[s][t] * levels.at(t);
                upTo[s][t] = sum;
                levelTimesMu[s][t] = weighted;
            }
        }
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
            double[] here = table[s];
            here[goal] = 0.0;
            for (int j = 0; j < goal; j++) {
                here[j] = least(b, s, j, bestEnd(b, s, j));
            }
        }
    }

    /**
     * Level at which bottle b best ends on supply s when it starts at level j; {@link #PASS} to pass the supply over,
     * {@link #ALMOST} to end just below its stop.
     */
    private int bestEnd(int b, int s, int j) {
        int goal = stopAt[b];
        double best = cost[b][s + 1][j];
        int end = PASS;
        int last = Math.min(goal, endAt[b][s][j]);
        for (int e = kept[s] ? goal : j + 1; e <= last && levels.at(e) <= problem.supply_molPerM3[s]; e++) {
            if (e == goal && !reaches(b, s, j)) {
                break;
            }
            double way = least(b, s, j, e);
            if (way < best) {
                best = way;
                end = e;
            }
        }
        boolean finishedLater = !kept[s]
                && last == goal
                && levels.at(goal) <= problem.supply_molPerM3[s]
                && cost[b][s + 1][goal - 1] < NO_WAY;
        return finishedLater && least(b, s, j, ALMOST) < best ? ALMOST : end;
    }

    private double least(int b, int s, int j, int end) {
        double[] next = cost[b][s + 1];
        if (end == PASS) {
            return next[j];
        }
        int goal = stopAt[b];
        return end == ALMOST ? upTo[s][goal - 1] * gain(b, j, goal) : price(b, s, end) * gain(b, j, end) + next[end];
    }

    private double gain(int b, int from, int to) {
        return problem.bottle_m3[b] * (levels.at(to) - levels.at(from));
    }

    private double price(int b, int s, int end) {
        if (kept[s]) {
            return 1.0 + mu[s][0];
        }
        return end == stopAt[b] ? upTo[s][end] : upTo[s][end - 1];
    }

    /** At most this much is paid in all for the gas of supplies {@code from} and above when they are at densities r. */
    double paidAtMost(int from, double[] r) {
        double sum = 0.0;
        for (int s = from; s < problem.supplies; s++) {
            if (kept[s]) {
                sum += mu[s][0] * problem.supply_m3[s] * (r[s] - problem.top_molPerM3);
            } else if (r[s] >= levels.at(0)) {
                int t = levels.below(r[s]);
                sum += problem.supply_m3[s] * (upTo[s][t] * r[s] - levelTimesMu[s][t]);
            }
        }
        return sum;
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
        double share = (q - levels.at(j)) / (levels.at(j + 1) - levels.at(j));
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
        double least = cost[b][0][levels.exactly(problem.bottle_molPerM3[b])];
        return least >= NO_WAY ? Double.POSITIVE_INFINITY : least;
    }

    /** Adds the gas bottle b takes on its cheapest way to {@code use[s][t]}, the left side of (1). */
    void addUse(int b, double[][] use) {
        if (stopAt[b] < 0) {
            return;
        }
        int j = levels.exactly(problem.bottle_molPerM3[b]);
        for (int s = 0; s < problem.supplies && j != stopAt[b]; s++) {
            int end = bestEnd(b, s, j);
            if (end == PASS) {
                continue;
            }
            int to = end == ALMOST ? stopAt[b] : end;
            double gain_mol = gain(b, j, to);
            int last = kept[s] ? 0 : end == stopAt[b] ? end : to - 1;
            for (int t = 0; t <= last; t++) {
                use[s][t] += gain_mol;
            }
            j = to;
        }
    }

    /** Right side of (1) at the start; 0 where the supply is below the level. */
    double has(int s, int t) {
        if (kept[s]) {
            return t == 0 ? problem.usable_mol(s, problem.supply_molPerM3[s]) : 0.0;
        }
        return problem.supply_m3[s] * Math.max(0.0, problem.supply_molPerM3[s] - levels.at(t));
    }
}
