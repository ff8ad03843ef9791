package org.lowfirst.planning.session;

/**
 * How much gas the supplies can give at most, so what must come from the kept ones and whether it can be enough at all.
 *
 * <p>Of all orders of bottles on one supply, each to equal pressure, fullest first takes the most gas: for bottles 1 and 2 with
 * q1 > q2, first 1 then 2 leaves the supply lower by V1 V2 (q1 - q2) / ((V + V1) (V + V2)). A bottle that would come to its stop
 * counts with all it needs and takes nothing from the others. Every bottle that goes on the supply ends no lower than the
 * supply can be brought (not used when a hose takes gas besides).
 *
 * <p>On the highest supply every stage ends at a stop, for there is no supply after it. So to bottles whose stop is at least t it
 * gives at most V (r - t).
 */
final class TransferBound {

    private final Problem problem;
    private final double[] stop;
    private final boolean[] kept;
    private final double[] level;
    private final double[] lowest;
    private final int[] turn;
    private final int last;

    TransferBound(Problem problem, double[] stop, boolean[] kept) {
        this.problem = problem;
        this.stop = stop.clone();
        this.kept = kept.clone();
        level = new double[problem.bottles];
        lowest = new double[problem.supplies];
        turn = new int[problem.bottles];
        last = problem.supplies - 1;
    }

    /**
     * Gas that the kept supplies from {@code from} on must give [mol]; infinite when the supplies cannot be enough.
     *
     * @param from lowest supply that may still be opened
     */
    double fromKept_mol(int from, double[] r, double[] q) {
        double lowestStop = Double.POSITIVE_INFINITY;
        double highestStop = 0.0;
        for (int b = 0; b < problem.bottles; b++) {
            if (!Problem.at(q[b], stop[b])) {
                lowestStop = Math.min(lowestStop, stop[b]);
                highestStop = Math.max(highestStop, stop[b]);
            }
        }
        double needed_mol = lacking_mol(from, r, q, lowestStop, true);
        for (double t = lowestStop; needed_mol < Double.POSITIVE_INFINITY && t < highestStop; ) {
            t = nextStop(q, t);
            if (lacking_mol(from, r, q, t, false) == Double.POSITIVE_INFINITY) {
                needed_mol = Double.POSITIVE_INFINITY;
            }
        }
        return needed_mol;
    }

    private double nextStop(double[] q, double above) {
        double next = Double.POSITIVE_INFINITY;
        for (int b = 0; b < problem.bottles; b++) {
            if (stop[b] > above && !Problem.at(q[b], stop[b])) {
                next = Math.min(next, stop[b]);
            }
        }
        return next;
    }

    /**
     * Gas that bottles whose stop is at least t lack after all supplies that are not kept [mol].
     *
     * @param all whether these are all bottles, so that the lowest densities of the supplies are found too
     */
    private double lacking_mol(int from, double[] r, double[] q, double t, boolean all) {
        int count = 0;
        double lacking_mol = 0.0;
        for (int b = 0; b < problem.bottles; b++) {
            if (stop[b] >= t && !Problem.at(q[b], stop[b])) {
                turn[count++] = b;
                level[b] = q[b];
                lacking_mol += problem.bottle_m3[b] * (stop[b] - q[b]);
            }
        }
        double keptRoom_mol = 0.0;
        for (int s = from; s <= last; s++) {
            if (kept[s]) {
                keptRoom_mol += problem.usable_mol(s, r[s]);
            } else if (s == last) {
                lacking_mol -= problem.supply_m3[s] * Math.max(0.0, r[s] - t);
            } else {
                lacking_mol -= most_mol(s, r[s], count, all);
            }
        }
        return lacking_mol > keptRoom_mol * (1.0 + Problem.SLACK) + 1e-9
                ? Double.POSITIVE_INFINITY
                : Math.max(0.0, lacking_mol);
    }

    private double most_mol(int s, double start, int count, boolean all) {
        sortFullestFirst(count);
        double left = start;
        double finishing_mol = 0.0;
        for (int i = 0; i < count; i++) {
            int b = turn[i];
            if (left > level[b]) {
                double volume = problem.bottle_m3[b];
                double equal = (problem.supply_m3[s] * left + volume * level[b]) / (problem.supply_m3[s] + volume);
                if (equal >= stop[b]) {
                    finishing_mol += volume * (stop[b] - level[b]);
                } else {
                    left = equal;
                }
            }
        }
        double most_mol = problem.supply_m3[s] * (start - left) + finishing_mol;
        if (all) {
            lowest[s] = problem.hasHose() ? 0.0 : start - most_mol / problem.supply_m3[s];
        }
        for (int i = 0; i < count; i++) {
            int b = turn[i];
            level[b] = Math.max(level[b], Math.min(lowest[s], stop[b]));
        }
        return most_mol;
    }

    private void sortFullestFirst(int count) {
        for (int i = 1; i < count; i++) {
            int b = turn[i];
            int j = i - 1;
            while (j >= 0 && level[turn[j]] < level[b]) {
                turn[j + 1] = turn[j];
                j--;
            }
            turn[j + 1] = b;
        }
    }
}
