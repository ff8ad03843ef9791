package org.lowfirst.planning.session;

/**
 * A number of ready bottles that no plan can exceed, for sessions too large to try every choice.
 *
 * <p>At any prices each bottle is worth 1 less what its cheapest way costs (see {@link PriceTable}); what the supplies can be
 * paid and the worths above 0 add up to a bound. One more than is known to be possible is aimed at: when the bound falls below
 * it, nothing more is possible. A bottle that costs the bound too much to take in, or to leave out, is marked so; what is left
 * open is divided into cases, with and without a bottle. The levels are halved when the prices come no further.
 */
final class ReadyBound {

    private static final double EXACT = 1e-6;
    private static final double BELOW_GOAL = 0.3;
    private static final double LEAST_HOPE = 1e-3;
    private static final int LEVELS_BETWEEN = 24;
    private static final int LEVELS_TRIED_ALONE = 60;
    private static final int REFINEMENTS = 2;
    private static final int MARK_EVERY = 20;
    /** A bottle taken in by nearly all or nearly none of the last rounds is not worth two cases. */
    private static final double UNDECIDED = 0.05;

    private final Problem problem;
    private final Budget budget;
    private final int goal;
    private PriceTable table;
    private double best = Double.POSITIVE_INFINITY;
    private int roundsLeft;
    /** By bottle: in how many of the last rounds it was worth taking in, weighted towards the latest. */
    private final double[] taken;

    private ReadyBound(Problem problem, int goal, int rounds, Budget budget) {
        this.problem = problem;
        this.goal = goal;
        this.budget = budget;
        roundsLeft = rounds;
        taken = new double[problem.bottles];
        double[] stop = problem.floor_molPerM3;
        table = new PriceTable(problem, stop, new boolean[problem.supplies], Levels.of(problem, stop, LEVELS_BETWEEN));
    }

    /**
     * @param ready number known to be possible
     * @param rounds at most so many rounds of changing prices
     * @return the bound, at least {@code ready}; whole bottles
     */
    static int of(Problem problem, int ready, int rounds, Budget budget) {
        if (ready >= problem.bottles) {
            return ready;
        }
        ReadyBound bound = new ReadyBound(problem, ready + 1, rounds, budget);
        return bound.excluded() ? ready : Math.max(ready + 1, bound.whole());
    }

    private int whole() {
        return (int) Math.min(problem.bottles, Math.floor(best + EXACT));
    }

    /** Whether the goal is proven to be out of reach. */
    private boolean excluded() {
        Marks marks = new Marks(problem, problem.floor_molPerM3);
        if (excludedAtOneLevel()) {
            return true;
        }
        int share = roundsLeft / 4;
        boolean excluded = excluded(marks, share);
        best = Math.min(best, marks.possible());
        for (int i = 0; i < REFINEMENTS && !excluded && roundsLeft > 0; i++) {
            table = table.refined();
            excluded = excluded(marks, share);
        }
        double root = Math.min(best, marks.possible());
        excluded = excluded || excludedInCases(marks, share / 4);
        best = root;
        return excluded;
    }

    /** Tries a price at one level only, on all supplies or on the last; a start that the rounds do not find by themselves. */
    private boolean excludedAtOneLevel() {
        double[][] mu = table.prices.mu;
        int count = table.levels.count();
        boolean excluded = false;
        for (int c = 1; c < count && !excluded; c += Math.max(1, count / LEVELS_TRIED_ALONE)) {
            for (int first = 0; first < problem.supplies && !excluded; first += Math.max(1, problem.supplies - 1)) {
                for (int s = first; s < problem.supplies; s++) {
                    mu[s][c] = 1.0;
                }
                table.reprice();
                best = Math.min(best, atTheBestScale());
                excluded = best < goal - EXACT;
                for (int s = first; s < problem.supplies; s++) {
                    mu[s][c] = 0.0;
                }
                roundsLeft--;
            }
        }
        table.reprice();
        return excluded;
    }

    /** The bound at the present prices times whatever makes it lowest. */
    private double atTheBestScale() {
        double supplied = table.prices.paidAtMost(0, problem.supply_molPerM3);
        double least = bound(0.0, supplied);
        for (int b = 0; b < problem.bottles; b++) {
            double pays = table.pays(b);
            if (pays > EXACT && pays < Double.POSITIVE_INFINITY) {
                least = Math.min(least, bound(1.0 / pays, supplied));
            }
        }
        return least;
    }

    private double bound(double scale, double supplied) {
        double bound = scale * supplied;
        for (int b = 0; b < problem.bottles; b++) {
            double pays = table.pays(b);
            bound += pays == Double.POSITIVE_INFINITY ? 0.0 : Math.max(0.0, 1.0 - scale * pays);
        }
        return bound;
    }

    /** Changes prices until the goal is out of reach or the rounds are spent; adds to the marks what follows on the way. */
    private boolean excluded(Marks marks, int rounds) {
        if (marks.possible() < goal) {
            return true;
        }
        Ascent ascent = new Ascent(table);
        double least = Double.POSITIVE_INFINITY;
        for (int round = 0; round < rounds && roundsLeft > 0 && budget.goesOn(); round++, roundsLeft--) {
            double[][] excess = ascent.openRound();
            double bound = table.prices.paidAtMost(0, problem.supply_molPerM3);
            for (int b = 0; b < problem.bottles; b++) {
                double worth = 1.0 - table.pays(b);
                boolean counts = marks.in(b) || (marks.open(b) && worth > 0.0);
                taken[b] += Math.max(0.04, 1.0 / (round + 1)) * ((counts ? 1.0 : 0.0) - taken[b]);
                if (counts && worth == Double.NEGATIVE_INFINITY) {
                    return true;
                }
                if (counts) {
                    bound += worth;
                    table.addUse(b, excess);
                }
            }
            boolean better = bound < least - 1e-9;
            least = Math.min(least, bound);
            if (bound < goal - EXACT || (better && round % MARK_EVERY == 0 && !mark(marks, bound))) {
                return true;
            }
            if (!ascent.closeRound(better, Math.max(bound - goal + BELOW_GOAL, LEAST_HOPE))) {
                break;
            }
        }
        best = Math.min(best, least);
        return false;
    }

    /** Marks bottles whose other mark would bring the bound below the goal; false when the marks contradict each other. */
    private boolean mark(Marks marks, double bound) {
        double spare = bound - goal + EXACT;
        boolean possible = true;
        for (int b = 0; b < problem.bottles && possible; b++) {
            double pays = table.pays(b);
            if (marks.open(b) && pays - 1.0 > spare) {
                possible = marks.leaveOut(b);
            } else if (marks.open(b) && 1.0 - pays > spare) {
                possible = marks.takeIn(b);
            }
        }
        return possible && marks.possible() >= goal;
    }

    private boolean excludedInCases(Marks marks, int rounds) {
        int divided = -1;
        double undecided = UNDECIDED;
        for (int b = 0; b < problem.bottles; b++) {
            double one = Math.min(taken[b], 1.0 - taken[b]);
            if (marks.open(b) && one > undecided) {
                divided = b;
                undecided = one;
            }
        }
        if (divided < 0) {
            return false;
        }
        Marks with = marks.copy();
        Marks without = marks.copy();
        return (!with.takeIn(divided) || excluded(with, rounds) || excludedInCases(with, rounds))
                && (!without.leaveOut(divided) || excluded(without, rounds) || excludedInCases(without, rounds));
    }
}
