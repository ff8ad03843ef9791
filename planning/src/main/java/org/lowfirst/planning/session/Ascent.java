package org.lowfirst.planning.session;

/** Moves prices along what is asked of each supply beyond what it has, in shortening steps (subgradient method). */
final class Ascent {

    private static final int PATIENCE = 12;
    private static final double SHORTEST = 1e-6;

    private final PriceTable table;
    private final double[][] excess;
    private double length = 1.0;
    private int waited;

    Ascent(PriceTable table) {
        this.table = table;
        excess = new double[table.problem.supplies][table.levels.count()];
    }

    /** Starts a round with what every supply has, counted negative. */
    double[][] openRound() {
        for (int s = 0; s < excess.length; s++) {
            for (int t = 0; t < excess[s].length; t++) {
                excess[s][t] = -table.has(s, t);
            }
        }
        return excess;
    }

    /**
     * Ends a round.
     *
     * @param better whether the bound got better in it
     * @param hoped how far the bound may still be from its goal
     * @return false when the steps have become too short to matter
     */
    boolean closeRound(boolean better, double hoped) {
        if (better) {
            waited = 0;
        } else if (++waited > PATIENCE) {
            length *= 0.6;
            waited = 0;
        }
        double square = 0.0;
        for (int s = 0; s < excess.length; s++) {
            for (int t = 0; t < excess[s].length; t++) {
                if (excess[s][t] > 0.0 || table.mu[s][t] > 0.0) {
                    square += excess[s][t] * excess[s][t];
                }
            }
        }
        if (!(square > 0.0) || length < SHORTEST) {
            return false;
        }
        double step = length * hoped / square;
        for (int s = 0; s < excess.length; s++) {
            for (int t = 0; t < excess[s].length; t++) {
                table.mu[s][t] = Math.max(0.0, table.mu[s][t] + step * excess[s][t]);
            }
        }
        table.reprice();
        return true;
    }
}
