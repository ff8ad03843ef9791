package org.lowfirst.planning.session;

/** A number of ready bottles that no plan can exceed, for sessions too large to try every choice. */
final class ReadyBound {

    private ReadyBound() {}

    /**
     * @param enough stop when no more than this many can be ready
     * @return the bound; whole bottles
     */
    static int of(Problem problem, int enough, int rounds, int between) {
        double[] stop = problem.floor_molPerM3.clone();
        PriceTable table =
                new PriceTable(problem, stop, new boolean[problem.supplies], Levels.of(problem, stop, between));
        Ascent ascent = new Ascent(table);
        double best = problem.bottles;
        for (int round = 0; round < rounds && whole(best) > enough; round++) {
            double[][] excess = ascent.openRound();
            double bound = table.paidAtMost(0, problem.supply_molPerM3);
            for (int b = 0; b < problem.bottles; b++) {
                double worth = 1.0 - table.pays(b);
                if (worth > 0.0) {
                    bound += worth;
                    table.addUse(b, excess);
                }
            }
            boolean better = bound < best - 1e-9;
            best = Math.min(best, bound);
            if (!ascent.closeRound(better, Math.max(bound - enough, 1e-3))) {
                break;
            }
        }
        return whole(best);
    }

    private static int whole(double bound) {
        return (int) Math.floor(bound + 1e-6);
    }
}
