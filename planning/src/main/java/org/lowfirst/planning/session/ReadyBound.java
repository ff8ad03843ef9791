package org.lowfirst.planning.session;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * A number of ready bottles that no plan can exceed, for sessions too large to try every choice.
 *
 * <p>One more than is known to be possible is the goal. At any prices (see {@link PriceTable}) a plan for so many bottles pays at
 * least what the cheapest of them pay; when that is more than the supplies can be paid, the goal is excluded. The ratio of the
 * two is driven up. On the way bottles are marked that every such plan must take in, or cannot; the levels are halved when the
 * prices come no further, and the bottles left open are divided into cases, with and without one.
 */
final class ReadyBound {

    private static final double EXACT = 1e-7;
    /** The ratio aimed at; just above what excludes. */
    private static final double HOPED_RATIO = 1.01;

    private static final double FAR_FROM_ONE = 1e3;

    private static final int LEVELS_BETWEEN = 20;
    private static final int LEVELS_TRIED_ALONE = 100;
    private static final int MARK_EVERY = 10;
    private static final double LATEST = 0.04;
    /** A bottle taken in by nearly all or nearly none of the last rounds is not worth two cases. */
    private static final double UNDECIDED = 0.05;

    private final Problem problem;
    private final Budget budget;
    private final int goal;
    private PriceTable table;
    private int roundsLeft;
    private double atMost;
    /** By bottle: in how many of the last rounds it was among the cheapest, the latest weighing most. */
    private final double[] taken;

    private ReadyBound(Problem problem, int goal, int rounds, Budget budget) {
        this.problem = problem;
        this.goal = goal;
        this.budget = budget;
        roundsLeft = rounds;
        atMost = problem.bottles;
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
        return bound.excluded(rounds) ? ready : Math.max(ready + 1, (int) Math.floor(bound.atMost + 1e-6));
    }

    /** Whether the goal is proven to be out of reach. */
    private boolean excluded(int rounds) {
        Marks marks = new Marks(problem, problem.floor_molPerM3);
        boolean excluded = excludedAtOneLevel(marks) || excluded(marks, rounds / 3);
        if (!excluded) {
            atMost = worth(marks).bound;
            table = table.refined();
            excluded = excluded(marks, rounds / 3);
        }
        if (!excluded) {
            atMost = Math.min(atMost, worth(marks).bound);
            excluded = excludedInCases(marks, rounds / 12);
        }
        return excluded;
    }

    /** Tries prices at one level only, on all supplies or on the last alone, and keeps the best as a start. */
    private boolean excludedAtOneLevel(Marks marks) {
        double[][] mu = table.prices.mu;
        int count = table.levels.count();
        double most = 0.0;
        int bestCell = 0;
        int bestFirst = 0;
        for (int cell = 1; cell < count && most <= 1.0; cell += Math.max(1, count / LEVELS_TRIED_ALONE)) {
            for (int first = 0; first < problem.supplies; first += Math.max(1, problem.supplies - 1)) {
                put(mu, cell, first, 1.0);
                table.reprice();
                double ratio = ratio(cheapest(marks));
                if (ratio > most) {
                    most = ratio;
                    bestCell = cell;
                    bestFirst = first;
                }
                put(mu, cell, first, 0.0);
                roundsLeft--;
            }
        }
        put(mu, bestCell, bestFirst, 1.0);
        table.reprice();
        return most > 1.0 + EXACT;
    }

    private static void put(double[][] mu, int cell, int first, double price) {
        for (int s = first; s < mu.length; s++) {
            mu[s][cell] = price;
        }
    }

    /** The goal's number of bottles that pay least, those that are in before others; fewer when there are no more. */
    private int[] cheapest(Marks marks) {
        return IntStream.range(0, problem.bottles)
                .filter(b -> !marks.out(b))
                .boxed()
                .sorted(Comparator.comparing((Integer b) -> !marks.in(b)).thenComparingDouble(table::pays))
                .limit(goal)
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** What the cheapest bottles pay at least over what the supplies can be paid at most. */
    private double ratio(int[] cheapest) {
        if (cheapest.length < goal) {
            return Double.POSITIVE_INFINITY;
        }
        double paid = Arrays.stream(cheapest).mapToDouble(table::pays).sum();
        double supplied = table.prices.paidAtMost(0, problem.supply_molPerM3);
        return paid > 0.0 ? paid / supplied : 0.0;
    }

    /** Changes prices until the goal is excluded or the rounds are spent; adds to the marks what follows on the way. */
    private boolean excluded(Marks marks, int rounds) {
        Ascent ascent = new Ascent(table);
        double most = 0.0;
        double[][] best = table.prices.copyOfMu();
        boolean goesOn = true;
        for (int round = 0; goesOn && round < rounds && roundsLeft > 0 && budget.goesOn(); round++, roundsLeft--) {
            int[] cheapest = cheapest(marks);
            double ratio = ratio(cheapest);
            boolean better = ratio > most;
            if (better) {
                most = ratio;
                best = table.prices.copyOfMu();
            }
            if (ratio > 1.0 + EXACT || (better && round % MARK_EVERY == 0 && !mark(marks))) {
                return true;
            }
            double[][] excess = ascent.openRound(ratio);
            for (int b : cheapest) {
                table.addUse(b, excess);
            }
            remember(cheapest, Math.max(LATEST, 1.0 / (round + 1)));
            double supplied = table.prices.paidAtMost(0, problem.supply_molPerM3);
            goesOn = ascent.closeRound(better, (HOPED_RATIO - ratio) * supplied);
            keepNearOne();
        }
        table.prices.set(best);
        table.reprice();
        return !mark(marks);
    }

    /** Only ratios count, so the prices are brought back when they have grown or shrunk much. */
    private void keepNearOne() {
        double supplied = table.prices.paidAtMost(0, problem.supply_molPerM3);
        if (supplied > FAR_FROM_ONE || (supplied > 0.0 && supplied < 1.0 / FAR_FROM_ONE)) {
            table.prices.multiply(1.0 / supplied);
            table.reprice();
        }
    }

    private void remember(int[] cheapest, double weight) {
        for (int b = 0; b < problem.bottles; b++) {
            taken[b] *= 1.0 - weight;
        }
        for (int b : cheapest) {
            taken[b] += weight;
        }
    }

    /**
     * Prices scaled so that each bottle is worth 1 less what it pays.
     *
     * @param bound what the supplies can be paid and the worths of the bottles that may be ready: no plan makes more ready
     */
    private record Worth(double scale, double bound) {}

    /** The scale at which the present prices give the least bound. */
    private Worth worth(Marks marks) {
        Worth least = new Worth(0.0, marks.possible());
        for (int b = 0; b < problem.bottles; b++) {
            double pays = table.pays(b);
            if (pays > 0.0 && pays < Double.POSITIVE_INFINITY) {
                double bound = bound(marks, 1.0 / pays);
                least = bound < least.bound ? new Worth(1.0 / pays, bound) : least;
            }
        }
        return least;
    }

    private double bound(Marks marks, double scale) {
        double bound = scale * table.prices.paidAtMost(0, problem.supply_molPerM3);
        for (int b = 0; b < problem.bottles; b++) {
            if (!marks.out(b)) {
                double worth = 1.0 - scale * table.pays(b);
                bound += marks.in(b) ? worth : Math.max(0.0, worth);
            }
        }
        return bound;
    }

    /** Marks bottles whose other mark would bring the bound below the goal; false when that leaves too few. */
    private boolean mark(Marks marks) {
        Worth worth = worth(marks);
        double spare = worth.bound - goal + EXACT;
        boolean possible = true;
        for (int b = 0; b < problem.bottles && possible; b++) {
            double more = 1.0 - worth.scale * table.pays(b);
            if (marks.open(b) && -more > spare) {
                possible = marks.leaveOut(b);
            } else if (marks.open(b) && more > spare) {
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
        double[][] mu = table.prices.copyOfMu();
        Marks with = marks.copy();
        if (with.takeIn(divided) && !excluded(with, rounds) && !excludedInCases(with, rounds)) {
            return false;
        }
        table.prices.set(mu);
        table.reprice();
        Marks without = marks.copy();
        return !without.leaveOut(divided) || excluded(without, rounds) || excludedInCases(without, rounds);
    }
}
