package org.lowfirst.planning.session;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * A loss that no plan can go below when given bottles are to come to their stops and given supplies are kept.
 *
 * <p>Keeps the best prices found, for pruning inside the search.
 */
final class LossBound {

    private final double fixed_mol;
    private double best_mol = Double.NEGATIVE_INFINITY;
    private final PriceTable table;

    /**
     * @param fixed_mol loss of the supplies above the highest stop that are not kept
     * @param enough_mol stop when the bound comes to this
     * @param taken how many of the bottles with a stop are to come to it: the cheapest ones at any prices
     */
    LossBound(PriceTable table, double fixed_mol, double enough_mol, int taken, int rounds) {
        this.table = table;
        this.fixed_mol = fixed_mol;
        Problem problem = table.problem;
        double scale_mol = 0.02 * table.need_mol();
        Ascent ascent = new Ascent(table);
        double[][] bestPrices = table.prices.copyOfMu();
        for (int round = 0; round < rounds && best_mol < enough_mol; round++) {
            double[][] excess = ascent.openRound(1.0);
            double bound_mol = fixed_mol - table.prices.paidAtMost(0, problem.supply_molPerM3);
            int[] cheapest = cheapest(taken);
            for (int b : cheapest) {
                bound_mol += table.pays(b);
            }
            boolean better = bound_mol > best_mol + 1e-9;
            if (better) {
                best_mol = bound_mol;
                bestPrices = table.prices.copyOfMu();
            }
            if (bound_mol == Double.POSITIVE_INFINITY) {
                break;
            }
            for (int b : cheapest) {
                table.addUse(b, excess);
            }
            double hoped = Math.max(1.05 * enough_mol - bound_mol, scale_mol);
            if (!ascent.closeRound(better, hoped)) {
                break;
            }
        }
        table.prices.set(bestPrices);
        table.reprice();
    }

    private int[] cheapest(int taken) {
        return IntStream.range(0, table.problem.bottles)
                .boxed()
                .sorted(Comparator.comparingDouble(table::pays))
                .limit(taken)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** The bound before anything is opened [mol]. */
    double root_mol() {
        return best_mol;
    }

    /**
     * Bound in the middle of a plan.
     *
     * @param used_mol loss of the kept supplies so far
     * @param from lowest supply that may still be opened
     * @param fromOf by bottle: lowest supply it may still go on
     */
    double inside_mol(double used_mol, int from, int[] fromOf, double[] r, double[] q) {
        double bound = fixed_mol + used_mol - table.prices.paidAtMost(from, r);
        for (int b = 0; b < q.length; b++) {
            bound += table.pays(b, Math.max(from, fromOf[b]), q[b]);
        }
        return bound;
    }
}
