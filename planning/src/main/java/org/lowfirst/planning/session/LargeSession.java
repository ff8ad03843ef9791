package org.lowfirst.planning.session;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Finds a good plan for more bottles than can be tried in every choice, and a bound that no plan can exceed.
 *
 * <p>Begins with all bottles at their floors and leaves out, one after another, the bottle without which least is lacking; then
 * tries to take on one more by exchanging bottles and nudging their order; then raises bottles to their wishes; then improves
 * the order for gas. The random numbers come from a fixed seed.
 */
final class LargeSession {

    private static final long SEED = 20_26;
    private static final int LEVELS_BETWEEN = 48;
    private static final int TRIALS_PER_ROUND = 20;
    /** A tenth of the rounds tells how far it may be worth looking; all of them go to the proof at the end. */
    private static final int FIRST_LOOK = 10;

    private static final int WAYS = 6;

    private final Problem problem;
    private final Budget budget;
    private final int rounds;
    private final Random random = new Random(SEED);
    private final double spread;

    LargeSession(Problem problem, Budget budget, int rounds) {
        this.problem = problem;
        this.budget = budget;
        this.rounds = rounds;
        spread = 0.08 * problem.top_molPerM3;
    }

    Found solve(double gasStep_mol) {
        Trial best = leaveOutUntilPossible();
        int readyAtMost = ReadyBound.of(problem, best.ready(), rounds / FIRST_LOOK + 1, budget);
        while (best.ready() < readyAtMost) {
            Trial more = takeOnOneMore(best);
            if (more == null) {
                break;
            }
            best = more;
        }
        if (best.ready() < readyAtMost) {
            readyAtMost = Math.min(readyAtMost, ReadyBound.of(problem, best.ready(), rounds, budget));
        }
        best = raiseToWishes(preferImportant(best));
        List<Candidate> found = improveOrder(best, gasStep_mol);
        double best_mol = found.get(0).loss_mol();
        boolean allFull = Choice.of(best.stop).full(problem) == problem.bottles;
        double[] stop = allFull ? problem.wish_molPerM3 : problem.floor_molPerM3;
        double atLeast_mol = Math.min(atLeast_mol(stop, best.ready(), best_mol), best_mol);
        return new Found(found, readyAtMost, allFull, atLeast_mol);
    }

    /** How many bottles a quick look makes ready. */
    int quickReady() {
        Trial best = leaveOutUntilPossible();
        for (Trial more = best; more != null && best.ready() < problem.bottles; more = takeOnOneMore(best)) {
            best = more;
        }
        return best.ready();
    }

    /** Stops and nudges, and what a sweep with them lacks. */
    private static final class Trial {
        final double[] stop;
        final double[][] nudge;
        final double lacking_mol;

        Trial(Problem problem, double[] stop, double[][] nudge) {
            this.stop = stop;
            this.nudge = nudge;
            lacking_mol =
                    Sweep.over(problem, stop, Keeping.none(problem), nudge).lacking_mol();
        }

        int ready() {
            return Choice.of(stop).ready();
        }
    }

    private Trial leaveOutUntilPossible() {
        Trial trial = new Trial(problem, problem.floor_molPerM3.clone(), new double[problem.supplies][problem.bottles]);
        while (trial.lacking_mol > 0.0) {
            Trial least = null;
            for (int b = 0; b < problem.bottles; b++) {
                if (!Problem.at(problem.bottle_molPerM3[b], trial.stop[b])) {
                    Trial without = new Trial(problem, with(trial.stop, b, Double.NaN), trial.nudge);
                    least = least == null || without.lacking_mol < least.lacking_mol ? without : least;
                }
            }
            trial = least == null ? trial : least;
        }
        return trial;
    }

    private @Nullable Trial takeOnOneMore(Trial from) {
        Trial best = null;
        for (int b = 0; b < problem.bottles; b++) {
            if (Double.isNaN(from.stop[b])) {
                Trial with = new Trial(problem, with(from.stop, b, problem.floor_molPerM3[b]), from.nudge);
                best = best == null || with.lacking_mol < best.lacking_mol ? with : best;
            }
        }
        for (int i = 0;
                best != null && best.lacking_mol > 0.0 && i < TRIALS_PER_ROUND * rounds && budget.spend();
                i++) {
            Trial next = neighbour(best);
            best = next.lacking_mol <= best.lacking_mol ? next : best;
        }
        return best == null || best.lacking_mol > 0.0 ? null : best;
    }

    private Trial neighbour(Trial trial) {
        double[] stop = trial.stop;
        double[][] nudge = trial.nudge;
        int out = random.nextInt(problem.bottles);
        int in = random.nextInt(problem.bottles);
        if (Double.isNaN(stop[in]) && !Double.isNaN(stop[out]) && !needsNothing(out)) {
            stop = with(with(stop, out, Double.NaN), in, problem.floor_molPerM3[in]);
        }
        if (stop == trial.stop || random.nextBoolean()) {
            nudge = nudged(nudge);
        }
        return new Trial(problem, stop, nudge);
    }

    private boolean needsNothing(int b) {
        return Problem.at(problem.bottle_molPerM3[b], problem.floor_molPerM3[b]);
    }

    /** Takes more important bottles for less important ones where the bank allows it. */
    private Trial preferImportant(Trial from) {
        Trial best = from;
        for (int in = 0; in < problem.bottles; in++) {
            for (int out = 0; out < problem.bottles && Double.isNaN(best.stop[in]); out++) {
                if (problem.priority[out] > problem.priority[in]
                        && !Double.isNaN(best.stop[out])
                        && !needsNothing(out)) {
                    double[] stop = with(with(best.stop, out, Double.NaN), in, problem.floor_molPerM3[in]);
                    Trial changed = new Trial(problem, stop, best.nudge);
                    best = changed.lacking_mol > 0.0 ? best : changed;
                }
            }
        }
        return best;
    }

    private Trial raiseToWishes(Trial from) {
        Trial best = from;
        int[] turn = IntStream.range(0, problem.bottles)
                .boxed()
                .sorted(Comparator.comparingInt(b -> problem.priority[b]))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int b : turn) {
            if (!Double.isNaN(best.stop[b]) && best.stop[b] < problem.wish_molPerM3[b]) {
                Trial raised = new Trial(problem, with(best.stop, b, problem.wish_molPerM3[b]), best.nudge);
                best = raised.lacking_mol > 0.0 ? best : raised;
            }
        }
        return best;
    }

    /** Plans found by nudging the order, least loss first. */
    private List<Candidate> improveOrder(Trial from, double gasStep_mol) {
        Candidate best = Objects.requireNonNull(
                Sweep.over(problem, from.stop, Keeping.none(problem), from.nudge)
                        .candidate(),
                "possible");
        List<Candidate> found = new ArrayList<>(List.of(best));
        List<boolean[]> ways = Keeping.ways(problem);
        for (int place = 0; place < Math.min(WAYS, ways.size()); place++) {
            boolean[] kept = ways.get(place);
            if (OrderSearch.fixed_mol(problem, kept) >= best.loss_mol() - gasStep_mol) {
                break;
            }
            Candidate better = nudgeOrder(from, kept);
            if (better != null) {
                found.add(better);
                best = better.loss_mol() < best.loss_mol() ? better : best;
            }
        }
        double most_mol = best.loss_mol() + gasStep_mol;
        found.removeIf(candidate -> candidate.loss_mol() > most_mol);
        found.sort(Comparator.comparingDouble(Candidate::loss_mol));
        return found;
    }

    private @Nullable Candidate nudgeOrder(Trial from, boolean[] kept) {
        Candidate best = null;
        double[][] nudge = from.nudge;
        double bestLacking_mol = Double.POSITIVE_INFINITY;
        for (int i = 0; i < TRIALS_PER_ROUND * rounds && budget.spend(); i++) {
            double[][] next = i == 0 ? nudge : nudged(nudge);
            Sweep sweep = Sweep.over(problem, from.stop, kept, next);
            double lacking_mol = sweep.lacking_mol();
            boolean better = best == null
                    ? lacking_mol <= bestLacking_mol
                    : lacking_mol == 0.0 && sweep.loss_mol() <= best.loss_mol();
            if (better) {
                nudge = next;
                bestLacking_mol = lacking_mol;
                best = sweep.candidate();
            }
        }
        return best;
    }

    /** Loss that no plan with this many of the stops reached can go below, whichever bottles they are [mol]. */
    private double atLeast_mol(double[] stop, int ready, double enough_mol) {
        double least_mol = Double.POSITIVE_INFINITY;
        List<boolean[]> ways = Keeping.ways(problem);
        for (int place = 0; place < ways.size(); place++) {
            boolean[] kept = ways.get(place);
            double fixed_mol = OrderSearch.fixed_mol(problem, kept);
            if (place >= WAYS || fixed_mol >= Math.min(least_mol, enough_mol)) {
                return Math.min(least_mol, fixed_mol);
            }
            PriceTable table = new PriceTable(problem, stop, kept, Levels.of(problem, stop, LEVELS_BETWEEN));
            LossBound bound = new LossBound(table, fixed_mol, enough_mol, ready, rounds / 6 + 1);
            least_mol = Math.min(least_mol, bound.root_mol());
        }
        return least_mol;
    }

    /** One bottle nudged on one supply, or on all of them. */
    private double[][] nudged(double[][] nudge) {
        double[][] changed = nudge.clone();
        int b = random.nextInt(problem.bottles);
        double value = spread * random.nextGaussian();
        int only = random.nextInt(problem.supplies + 1);
        for (int s = 0; s < problem.supplies; s++) {
            if (only == s || only == problem.supplies) {
                changed[s] = with(nudge[s], b, value);
            }
        }
        return changed;
    }

    private static double[] with(double[] values, int place, double value) {
        double[] changed = Arrays.copyOf(values, values.length);
        changed[place] = value;
        return changed;
    }
}
