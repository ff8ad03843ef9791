package org.lowfirst.planning.session;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A quick plan: supply by supply in rank order, on each the fullest bottle first unless nudged; kept supplies only finish
 * bottles, those that need most first.
 */
final class Sweep {

    private final Problem problem;
    private final double[] r;
    private final double[] q;
    private final int[][] order;
    private final int[] on;
    private final double[] stop;

    private Sweep(Problem problem, double[] stop) {
        this.problem = problem;
        this.stop = stop;
        r = problem.supply_molPerM3.clone();
        q = problem.bottle_molPerM3.clone();
        order = new int[problem.supplies][problem.bottles];
        on = new int[problem.supplies];
    }

    /**
     * @param stop by bottle, not a number for bottles left out
     * @param kept supplies that must not fall below the highest stop
     * @param nudge by supply and bottle: density added to its own when the fullest is looked for [mol/m3]
     */
    static Sweep over(Problem problem, double[] stop, boolean[] kept, double[][] nudge) {
        Sweep sweep = new Sweep(problem, stop.clone());
        for (int s = 0; s < problem.supplies; s++) {
            if (kept[s]) {
                sweep.finishOn(s);
            } else {
                sweep.serveAllOn(s, nudge[s]);
            }
        }
        return sweep;
    }

    /** Without a nudge. */
    static Sweep over(Problem problem, double[] stop, boolean[] kept) {
        return over(problem, stop, kept, new double[problem.supplies][problem.bottles]);
    }

    private void serveAllOn(int s, double[] nudge) {
        for (int b : turn(nudge)) {
            if (!Problem.at(q[b], stop[b]) && problem.gives(r[s], s, q[b])) {
                problem.stage(r, q, s, b, stop[b]);
                order[s][on[s]++] = b;
            }
        }
    }

    private void finishOn(int s) {
        double[] need = new double[problem.bottles];
        for (int b = 0; b < problem.bottles; b++) {
            need[b] = Problem.at(q[b], stop[b]) ? -q[b] : problem.bottle_m3[b] * (stop[b] - q[b]) - q[b];
        }
        for (int b : turn(need)) {
            double gain_mol = problem.bottle_m3[b] * (stop[b] - q[b]);
            if (!Problem.at(q[b], stop[b]) && problem.rest(s, r[s], gain_mol) >= problem.top_molPerM3) {
                problem.stage(r, q, s, b, stop[b]);
                order[s][on[s]++] = b;
            }
        }
    }

    /** Bottles by density plus nudge, highest first. */
    private int[] turn(double[] nudge) {
        int[] turn = new int[problem.bottles];
        for (int b = 0; b < problem.bottles; b++) {
            int k = b;
            while (k > 0 && q[turn[k - 1]] + nudge[turn[k - 1]] < q[b] + nudge[b]) {
                turn[k] = turn[k - 1];
                k--;
            }
            turn[k] = b;
        }
        return turn;
    }

    /** Gas that bottles lack at the end [mol]; 0 when all come to their stops. */
    double lacking_mol() {
        return problem.need_mol(q, stop);
    }

    double loss_mol() {
        return problem.usable_mol(problem.supply_molPerM3) - problem.usable_mol(r);
    }

    /** The plan; null when a bottle does not come to its stop. */
    @Nullable
    Candidate candidate() {
        if (lacking_mol() > 0.0) {
            return null;
        }
        int[][] found = new int[problem.supplies][];
        for (int s = 0; s < problem.supplies; s++) {
            found[s] = Arrays.copyOf(order[s], on[s]);
        }
        return new Candidate(new Layout(found, stop), loss_mol());
    }
}
