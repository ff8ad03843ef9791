package org.lowfirst.planning.session;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Looks through every order of given bottles on the supplies for the one with the least loss (depth first, branch and bound).
 *
 * <p>A supply that is not kept serves every unfinished bottle it is above before the next supply is opened: a bottle left out
 * could be put last on it at no cost to any other, so nothing is missed. On a kept supply every stage ends at a stop.
 */
final class OrderSearch {

    private final Problem problem;
    private final double[] stop;
    private final boolean[] kept;
    private final double fixed_mol;
    private final LossBound bound;
    private final Budget budget;
    private final TransferBound transfer;
    private final int lastSpent;

    private final double[] r;
    private final double[] q;
    private final int[] fromOf;
    private final int[][] order;
    private final int[] on;
    private final int[][] turns;
    private int depth;
    private int open;

    private double limit_mol;
    private final double step_mol;
    private @Nullable Layout best;
    private double best_mol = Double.POSITIVE_INFINITY;

    /**
     * @param limit_mol only plans with a loss below this count
     * @param step_mol once a plan is found, only plans better by more than this are looked for; infinite for the first found
     */
    OrderSearch(
            Problem problem,
            double[] stop,
            boolean[] kept,
            LossBound bound,
            Budget budget,
            double limit_mol,
            double step_mol) {
        this.problem = problem;
        this.stop = stop.clone();
        this.kept = kept.clone();
        this.bound = bound;
        this.budget = budget;
        this.limit_mol = limit_mol;
        this.step_mol = step_mol;
        r = problem.supply_molPerM3.clone();
        q = problem.bottle_molPerM3.clone();
        fromOf = new int[problem.bottles];
        order = new int[problem.supplies][problem.bottles];
        on = new int[problem.supplies];
        turns = new int[problem.supplies * problem.bottles + 1][problem.bottles];
        fixed_mol = fixed_mol(problem, kept);
        transfer = new TransferBound(problem, stop, kept);
        int last = problem.supplies - 1;
        while (last >= 0 && kept[last]) {
            last--;
        }
        lastSpent = last;
        for (int b = 0; b < problem.bottles; b++) {
            open += Problem.at(q[b], stop[b]) ? 0 : 1;
        }
    }

    /** Loss of the supplies above the highest stop that are not kept [mol]. */
    static double fixed_mol(Problem problem, boolean[] kept) {
        double sum = 0.0;
        for (int s = 0; s < problem.supplies; s++) {
            sum += kept[s] ? 0.0 : problem.usable_mol(s, problem.supply_molPerM3[s]);
        }
        return sum;
    }

    /** Searches; afterwards {@link #best()} and {@link #best_mol()} hold what was found. */
    void run() {
        layer(0);
    }

    @Nullable
    Layout best() {
        return best;
    }

    double best_mol() {
        return best_mol;
    }

    /** True when the answer is known well enough below: the caller need not look further. */
    private boolean layer(int s) {
        if (open == 0) {
            leaf();
            return s > lastSpent;
        }
        if (s == problem.supplies || hopeless(s)) {
            return false;
        }
        if (kept[s]) {
            return keptLayer(s, 0);
        }
        spentLayer(s);
        return false;
    }

    private void spentLayer(int s) {
        int[] turn = turns[depth];
        int count = eligible(s, turn);
        if (count == 0) {
            layer(s + 1);
            return;
        }
        depth++;
        double supplyBefore = r[s];
        for (int k = 0; k < count; k++) {
            int b = turn[k];
            if (twinBefore(turn, k) || !budget.spend()) {
                continue;
            }
            double bottleBefore = q[b];
            int fromBefore = fromOf[b];
            problem.stage(r, q, s, b, stop[b]);
            boolean finished = Problem.at(q[b], stop[b]);
            order[s][on[s]++] = b;
            fromOf[b] = s + 1;
            open -= finished ? 1 : 0;
            if (open == 0) {
                leaf();
            } else if (!hopeless(s)) {
                spentLayer(s);
            }
            open += finished ? 1 : 0;
            fromOf[b] = fromBefore;
            on[s]--;
            q[b] = bottleBefore;
            r[s] = supplyBefore;
        }
        depth--;
    }

    /** Bottles from {@code first} on may finish here or be left to a later supply. */
    private boolean keptLayer(int s, int first) {
        if (open == 0) {
            leaf();
            return s >= lastSpent;
        }
        double supplyBefore = r[s];
        for (int b = first; b < problem.bottles; b++) {
            if (Problem.at(q[b], stop[b])) {
                continue;
            }
            double bottleBefore = q[b];
            double gain_mol = problem.bottle_m3[b] * (stop[b] - bottleBefore);
            double rest = problem.rest(s, supplyBefore, gain_mol);
            if (rest < problem.top_molPerM3 || !budget.spend()) {
                continue;
            }
            int fromBefore = fromOf[b];
            r[s] = rest;
            q[b] = stop[b];
            order[s][on[s]++] = b;
            fromOf[b] = s + 1;
            open--;
            boolean known = keptLayer(s, b + 1);
            open++;
            fromOf[b] = fromBefore;
            on[s]--;
            q[b] = bottleBefore;
            r[s] = supplyBefore;
            if (known) {
                return true;
            }
        }
        return layer(s + 1);
    }

    private boolean hopeless(int s) {
        double used_mol = 0.0;
        for (int i = 0; i < problem.supplies; i++) {
            used_mol += kept[i] ? problem.supply_m3[i] * (problem.supply_molPerM3[i] - r[i]) : 0.0;
        }
        return fixed_mol + used_mol + transfer.fromKept_mol(s, r, q) >= limit_mol
                || bound.inside_mol(used_mol, s, fromOf, r, q) >= limit_mol
                || (s > lastSpent && packedTooFull(s));
    }

    /** Whether the kept supplies left have too little gas for all that is still needed. */
    private boolean packedTooFull(int s) {
        double room_mol = 0.0;
        for (int i = s; i < problem.supplies; i++) {
            room_mol += problem.usable_mol(i, r[i]);
        }
        return problem.need_mol(q, stop) > room_mol * (1.0 + Problem.SLACK);
    }

    private void leaf() {
        double loss_mol = problem.usable_mol(problem.supply_molPerM3) - problem.usable_mol(r);
        if (loss_mol < limit_mol) {
            int[][] found = new int[problem.supplies][];
            for (int s = 0; s < problem.supplies; s++) {
                found[s] = Arrays.copyOf(order[s], on[s]);
            }
            best = new Layout(found, stop);
            best_mol = loss_mol;
            limit_mol = loss_mol - step_mol;
        }
    }

    /** Puts the unfinished bottles that supply s is above into {@code turn}, fullest first; how many there are. */
    private int eligible(int s, int[] turn) {
        int count = 0;
        for (int b = 0; b < problem.bottles; b++) {
            if (!Problem.at(q[b], stop[b]) && problem.gives(r[s], s, q[b])) {
                int k = count++;
                while (k > 0 && q[turn[k - 1]] < q[b]) {
                    turn[k] = turn[k - 1];
                    k--;
                }
                turn[k] = b;
            }
        }
        return count;
    }

    /** Whether a bottle just like this one has had its turn already. */
    private boolean twinBefore(int[] turn, int k) {
        int b = turn[k];
        for (int i = 0; i < k; i++) {
            int a = turn[i];
            if (q[a] == q[b] && problem.bottle_m3[a] == problem.bottle_m3[b] && stop[a] == stop[b]) {
                return true;
            }
        }
        return false;
    }
}
