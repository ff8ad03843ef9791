package org.lowfirst.planning.session;

/**
 * Moves prices along what is asked of each supply beyond what it has, in shortening steps. Half of every direction is the one
 * before, which keeps the prices from swinging about between ways that cost the same (deflected subgradient method).
 */
final class Ascent {

    private static final int PATIENCE = 20;
    private static final double SHORTER = 0.7;
    private static final double SHORTEST = 1e-4;
    private static final double FRESH = 0.5;

    private final PriceTable table;
    private final double[][] mu;
    private final double[][] excess;
    private final double[][] direction;
    private double length = 1.0;
    private int waited;
    private boolean moved;

    Ascent(PriceTable table) {
        this.table = table;
        mu = table.prices.mu;
        excess = new double[mu.length][table.levels.count()];
        direction = new double[mu.length][table.levels.count()];
    }

    /**
     * Starts a round with what every supply has, counted negative.
     *
     * @param times how many times it counts
     */
    double[][] openRound(double times) {
        for (int s = 0; s < excess.length; s++) {
            for (int c = 0; c < excess[s].length; c++) {
                excess[s][c] = -times * table.prices.has_mol(s, c);
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
            length *= SHORTER;
            waited = 0;
        }
        double square = turn();
        if (!(square > 0.0) || length < SHORTEST) {
            return false;
        }
        double step = length * hoped / square;
        for (int s = 0; s < mu.length; s++) {
            for (int c = 0; c < mu[s].length; c++) {
                mu[s][c] = Math.max(0.0, mu[s][c] + step * direction[s][c]);
            }
        }
        table.reprice();
        return true;
    }

    /** Turns the direction towards the excess; its square, without prices that cannot fall any further. */
    private double turn() {
        double square = 0.0;
        for (int s = 0; s < mu.length; s++) {
            for (int c = 0; c < mu[s].length; c++) {
                double before = moved ? direction[s][c] : excess[s][c];
                direction[s][c] = FRESH * excess[s][c] + (1.0 - FRESH) * before;
                if (direction[s][c] > 0.0 || mu[s][c] > 0.0) {
                    square += direction[s][c] * direction[s][c];
                }
            }
        }
        moved = true;
        return square;
    }
}
