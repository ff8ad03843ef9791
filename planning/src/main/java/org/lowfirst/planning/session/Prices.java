package org.lowfirst.planning.session;

import java.util.Arrays;

/**
 * Prices for the gas of every supply, spread evenly over the cells between levels (cell c lies below level c; cell 0 is the
 * lowest level itself). See {@link PriceTable} for what is priced.
 */
final class Prices {

    private final Problem problem;
    private final boolean[] kept;
    private final Levels levels;
    /** By supply and cell: the price of the whole cell; a kept supply has its one price in cell 0. */
    final double[][] mu;

    private final double[][] upTo;
    private final double[][] middleTimesMu;

    Prices(Problem problem, boolean[] kept, Levels levels) {
        this.problem = problem;
        this.kept = kept.clone();
        this.levels = levels;
        mu = new double[problem.supplies][levels.count()];
        upTo = new double[problem.supplies][levels.count()];
        middleTimesMu = new double[problem.supplies][levels.count()];
    }

    /** The same prices on levels twice as fine. */
    Prices on(Levels finer) {
        Prices same = new Prices(problem, kept, finer);
        for (int s = 0; s < mu.length; s++) {
            same.mu[s][0] = mu[s][0];
            for (int c = 1; c < levels.count(); c++) {
                same.mu[s][2 * c - 1] = 0.5 * mu[s][c];
                same.mu[s][2 * c] = 0.5 * mu[s][c];
            }
        }
        return same;
    }

    double[][] copyOfMu() {
        return Arrays.stream(mu).map(double[]::clone).toArray(double[][]::new);
    }

    void set(double[][] prices) {
        for (int s = 0; s < mu.length; s++) {
            System.arraycopy(prices[s], 0, mu[s], 0, mu[s].length);
        }
    }

    void multiply(double times) {
        for (double[] ofSupply : mu) {
            for (int c = 0; c < ofSupply.length; c++) {
                ofSupply[c] *= times;
            }
        }
    }

    boolean kept(int s) {
        return kept[s];
    }

    /** Adds up the present prices. */
    void sum() {
        for (int s = 0; s < mu.length; s++) {
            double sum = 0.0;
            double weighted = 0.0;
            for (int c = 0; c < levels.count(); c++) {
                sum += mu[s][c];
                weighted += mu[s][c] * levels.middle(c);
                upTo[s][c] = sum;
                middleTimesMu[s][c] = weighted;
            }
        }
    }

    /** M(s, e) at a level: the price of gas that ends there; loss comes on top for a kept supply. */
    double at(int s, int level) {
        return kept[s] ? 1.0 + mu[s][0] : upTo[s][level];
    }

    /** How fast M(s, e) rises in a cell. */
    double rise(int s, int cell) {
        return mu[s][cell] / levels.width(cell);
    }

    /** At most this much is paid in all for the gas of supplies {@code from} and above when they are at densities r. */
    double paidAtMost(int from, double[] r) {
        double sum = 0.0;
        for (int s = from; s < mu.length; s++) {
            if (kept[s]) {
                sum += mu[s][0] * problem.supply_m3[s] * (r[s] - problem.top_molPerM3);
            } else if (r[s] >= levels.at(0)) {
                int t = levels.below(r[s]);
                double whole = upTo[s][t] * r[s] - middleTimesMu[s][t];
                double above = r[s] - levels.at(t);
                double part = t + 1 < levels.count() ? 0.5 * rise(s, t + 1) * above * above : 0.0;
                sum += problem.supply_m3[s] * (whole + part);
            }
        }
        return sum;
    }

    /** Right side of (1) at the start, on the mean over a cell [mol]; 0 where the supply is below the cell. */
    double has_mol(int s, int cell) {
        double r = problem.supply_molPerM3[s];
        if (kept[s]) {
            return cell == 0 ? problem.usable_mol(s, r) : 0.0;
        }
        return problem.supply_m3[s] * Math.max(0.0, r - levels.middle(cell));
    }

    /**
     * Adds the gas of a stage on supply s to the left side of (1).
     *
     * @param use_mol by cell of the supply
     * @param cell where it ends
     * @param share how far up in the cell, 0 to 1
     */
    void addUse(int s, double[] use_mol, int cell, double share, double gain_mol) {
        if (kept[s]) {
            use_mol[0] += gain_mol;
            return;
        }
        for (int c = 0; c < cell; c++) {
            use_mol[c] += gain_mol;
        }
        use_mol[cell] += share * gain_mol;
    }
}
