package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Looks, for choices of bottles that can be done, for the plan that loses least gas above the highest stop. */
final class LeastLoss {

    private static final int MOST_CANDIDATES = 16;
    private static final int LEVELS_BETWEEN = 32;
    private static final int ROUNDS = 250;

    private final Problem problem;
    private final Budget budget;
    private final double step_mol;
    private final List<Candidate> candidates;
    private double best_mol;
    private double atLeast_mol = Double.POSITIVE_INFINITY;

    /**
     * @param step_mol differences of loss below this do not count
     * @param known plans to begin with, at least one
     */
    LeastLoss(Problem problem, Budget budget, double step_mol, List<Candidate> known) {
        this.problem = problem;
        this.budget = budget;
        this.step_mol = step_mol;
        candidates = new ArrayList<>(known);
        best_mol = known.stream().mapToDouble(Candidate::loss_mol).min().orElseThrow();
    }

    /** Looks through all orders of bottles with these stops. */
    void improve(double[] stop) {
        List<boolean[]> ways = Keeping.ways(problem);
        for (boolean[] kept : ways) {
            offer(Sweep.over(problem, stop, kept).candidate());
        }
        for (int place = 0; place < ways.size(); place++) {
            boolean[] kept = ways.get(place);
            double fixed_mol = OrderSearch.fixed_mol(problem, kept);
            if (fixed_mol >= best_mol - step_mol) {
                atLeast_mol = Math.min(atLeast_mol, Math.max(fixed_mol, best_mol - step_mol));
                break;
            }
            if (Keeping.close(place)) {
                improve(stop, kept, fixed_mol);
            } else {
                atLeast_mol = Math.min(atLeast_mol, fixed_mol);
            }
        }
        atLeast_mol = Math.min(atLeast_mol, best_mol);
    }

    private void improve(double[] stop, boolean[] kept, double fixed_mol) {
        double limit_mol = best_mol - step_mol;
        PriceTable table = new PriceTable(problem, stop, kept, Levels.of(problem, stop, LEVELS_BETWEEN));
        LossBound bound = new LossBound(table, fixed_mol, limit_mol, problem.bottles, ROUNDS);
        if (bound.root_mol() >= limit_mol) {
            atLeast_mol = Math.min(atLeast_mol, bound.root_mol());
            return;
        }
        budget.allow(budget.left() - budget.left() / 8);
        OrderSearch search = new OrderSearch(problem, stop, kept, bound, budget, limit_mol, step_mol);
        search.run();
        Layout found = search.best();
        if (found != null) {
            offer(new Candidate(found, search.best_mol()));
        }
        atLeast_mol = Math.min(atLeast_mol, budget.cutOff() ? bound.root_mol() : best_mol - step_mol);
    }

    /** Takes note of a plan. */
    void offer(@Nullable Candidate candidate) {
        if (candidate != null) {
            candidates.add(candidate);
            best_mol = Math.min(best_mol, candidate.loss_mol());
        }
    }

    double best_mol() {
        return best_mol;
    }

    /** Loss no plan with the stops looked through can go below [mol]. */
    double atLeast_mol() {
        return Math.max(0.0, Math.min(atLeast_mol, best_mol));
    }

    /** The plans that are within a step of the best, best first. */
    List<Candidate> candidates() {
        return candidates.stream()
                .filter(c -> c.loss_mol() <= best_mol + step_mol)
                .sorted(Comparator.comparingDouble(Candidate::loss_mol))
                .limit(MOST_CANDIDATES)
                .toList();
    }
}
