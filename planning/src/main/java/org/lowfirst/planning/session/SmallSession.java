package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Tries every choice of bottles, best first, until one can be done; then looks for the order that leaves most gas. Proves what it
 * has tried to the end.
 */
final class SmallSession {

    /** Largest number of choices that are all tried: six bottles with a floor each. */
    private static final int MOST_CHOICES = 729;

    private static final int MOST_BOTTLES = 8;
    private static final int MOST_SUPPLIES = 6;

    private static final int ROUNDS = 200;
    private static final int LEVELS_BETWEEN = 32;
    private static final double NOTHING_MOL = 1e-6;

    private final Problem problem;
    private final Budget budget;
    private final List<Choice> impossible = new ArrayList<>();

    SmallSession(Problem problem, Budget budget) {
        this.problem = problem;
        this.budget = budget;
    }

    /** Whether a session is small enough to try every choice. */
    static boolean suits(Problem problem) {
        return problem.bottles <= MOST_BOTTLES
                && problem.supplies <= MOST_SUPPLIES
                && Choice.all(problem).size() <= MOST_CHOICES;
    }

    Found solve(List<Choice> choices, Comparator<Choice> order, double gasStep_mol) {
        List<Choice> sorted = new ArrayList<>(choices);
        sorted.sort(order);
        int readyAtMost = -1;
        boolean bestChoice = true;
        int start = 0;
        while (start < sorted.size()) {
            int end = start;
            List<Candidate> possible = new ArrayList<>();
            List<Choice> open = new ArrayList<>();
            while (end < sorted.size() && order.compare(sorted.get(start), sorted.get(end)) == 0) {
                Choice choice = sorted.get(end++);
                Candidate found = tryOut(choice);
                if (found != null) {
                    possible.add(found);
                } else if (!ruledOut(choice)) {
                    open.add(choice);
                }
            }
            boolean unsure = !open.isEmpty();
            if (readyAtMost < 0 && (unsure || !possible.isEmpty())) {
                readyAtMost = sorted.get(start).ready();
            }
            if (!possible.isEmpty()) {
                return leastLoss(possible, open, readyAtMost, bestChoice, gasStep_mol);
            }
            bestChoice &= !unsure;
            start = end;
        }
        throw new AssertionError("taking on no bottle is always possible");
    }

    /** Whether a plan for the choice was found. */
    boolean possible(Choice choice) {
        return tryOut(choice) != null;
    }

    private boolean ruledOut(Choice choice) {
        return impossible.stream().anyMatch(choice::asksAtLeast);
    }

    /** A plan for the choice; null when there is none or none was found. */
    private @Nullable Candidate tryOut(Choice choice) {
        if (ruledOut(choice)) {
            return null;
        }
        boolean[] kept = Keeping.none(problem);
        double[] stop = choice.stops();
        Candidate quick = Sweep.over(problem, stop, kept).candidate();
        if (quick != null) {
            return quick;
        }
        double transfer_mol = new TransferBound(problem, stop, kept)
                .fromKept_mol(0, problem.supply_molPerM3, problem.bottle_molPerM3);
        if (transfer_mol == Double.POSITIVE_INFINITY) {
            impossible.add(choice);
            return null;
        }
        double fixed_mol = OrderSearch.fixed_mol(problem, kept);
        double limit_mol = fixed_mol + NOTHING_MOL;
        LossBound bound = bound(stop, kept, fixed_mol, limit_mol);
        if (bound.root_mol() >= limit_mol) {
            impossible.add(choice);
            return null;
        }
        budget.allow(budget.left() / 3);
        OrderSearch search = new OrderSearch(problem, stop, kept, bound, budget, limit_mol, Double.POSITIVE_INFINITY);
        search.run();
        Layout found = search.best();
        if (found != null) {
            return new Candidate(found, search.best_mol());
        }
        if (!budget.cutOff()) {
            impossible.add(choice);
        }
        return null;
    }

    private LossBound bound(double[] stop, boolean[] kept, double fixed_mol, double enough_mol) {
        PriceTable table = new PriceTable(problem, stop, kept, Levels.of(problem, stop, LEVELS_BETWEEN));
        return new LossBound(table, fixed_mol, enough_mol, problem.bottles, ROUNDS);
    }

    private Found leastLoss(
            List<Candidate> possible, List<Choice> open, int readyAtMost, boolean bestChoice, double gasStep_mol) {
        possible.sort(Comparator.comparingDouble(Candidate::loss_mol));
        budget.report(problem, possible.get(0), readyAtMost);
        LeastLoss least = new LeastLoss(problem, budget, gasStep_mol, possible);
        for (Candidate candidate : possible) {
            least.improve(candidate.layout().stops());
        }
        // a choice nobody could decide may hide a plan that loses nothing
        double atLeast_mol = open.isEmpty() ? least.atLeast_mol() : 0.0;
        return new Found(least.candidates(), readyAtMost, bestChoice, atLeast_mol);
    }
}
