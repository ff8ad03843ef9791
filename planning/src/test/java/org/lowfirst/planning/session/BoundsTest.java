package org.lowfirst.planning.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.gas.Amount;

/** The bounds used for large sessions never cut off what every plan tried shows to be possible. Densities in bar, litres. */
final class BoundsTest {

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    static LongStream few() {
        return LongStream.range(0, 12);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theReadyBoundIsNeverBelowTheBestPlan(long seed) {
        double scale = new double[] {1.0, 2.0, 4.0, 6.0}[(int) (seed / 2 % 4)];
        SessionRequest request = Sessions.random(seed, 2 + (int) (seed % 2), 3, seed % 3 != 0, seed % 5 == 0, scale);
        int ready = EveryPlan.of(request).ready();
        Problem problem = problem(request);
        for (int known = 0; known < ready; known++) {
            assertThat(ReadyBound.of(problem, known, 600, patient())).isBetween(ready, problem.bottles);
        }
    }

    /** The bound is asked whether as many are possible as a plan has just made ready. */
    @ParameterizedTest
    @MethodSource("few")
    void theReadyBoundOfALargeSessionIsNotBelowThePlanFound(long seed) {
        double scale = new double[] {1.0, 2.5, 4.0}[(int) (seed % 3)];
        SessionRequest request = Sessions.random(seed, 8, 20, seed % 2 == 0, seed % 5 == 0, scale);
        Problem problem = problem(request);
        int ready = new LargeSession(problem, patient(), 300).quickReady();
        if (ready > 0) {
            assertThat(ReadyBound.of(problem, ready - 1, 900, patient())).isGreaterThanOrEqualTo(ready);
        }
    }

    private static Budget patient() {
        return new Budget(Effort.USUAL.nodes(), SessionWatch.PATIENT, new SessionWatch.SoFar(0, 0, Amount.NONE, 0));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theLossBoundIsNeverAboveTheBestPlan(long seed) {
        SessionRequest request = Sessions.random(seed, 2 + (int) (seed % 2), 3, seed % 3 != 0, seed % 5 == 0, 0.8);
        EveryPlan every = EveryPlan.of(request);
        Problem problem = problem(request);
        double usable = problem.usable_mol(problem.supply_molPerM3);
        double loss = usable - every.gasLeft_barL();
        double least = Double.POSITIVE_INFINITY;
        for (boolean[] kept : Keeping.ways(problem)) {
            double[] stop = problem.wish_molPerM3;
            PriceTable table = new PriceTable(problem, stop, kept, Levels.of(problem, stop, 40));
            LossBound bound =
                    new LossBound(table, OrderSearch.fixed_mol(problem, kept), usable + 1, every.ready(), 300);
            least = Math.min(least, bound.root_mol());
        }
        assertThat(least).isLessThanOrEqualTo(loss + 1e-6);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void fullestFirstTakesMostFromOneSupply(long seed) {
        SessionRequest request = Sessions.random(seed, 1, 4, true, true, 1.0);
        Problem problem = problem(request).wantingAtMost(1e9);
        double[] stop = new double[problem.bottles];
        java.util.Arrays.fill(stop, 1e6);
        double most = problem.need_mol(problem.bottle_molPerM3, stop)
                - new TransferBound(twoSupplies(problem), stop, new boolean[] {false, true})
                        .fromKept_mol(0, new double[] {problem.supply_molPerM3[0], 1e7}, problem.bottle_molPerM3);
        double best = 0;
        for (int[] order : orders(problem.bottles)) {
            double[] r = problem.supply_molPerM3.clone();
            double[] q = problem.bottle_molPerM3.clone();
            for (int b : order) {
                if (problem.gives(r[0], 0, q[b])) {
                    problem.stage(r, q, 0, b, stop[b]);
                }
            }
            best = Math.max(best, problem.supply_m3[0] * (problem.supply_molPerM3[0] - r[0]));
        }
        assertThat(most).isCloseTo(best, org.assertj.core.data.Percentage.withPercentage(1e-6));
    }

    private static Problem twoSupplies(Problem problem) {
        return problem.onBank(new double[] {problem.supply_m3[0], 1e6}, new double[] {problem.supply_molPerM3[0], 1e7});
    }

    private static java.util.List<int[]> orders(int n) {
        if (n == 0) {
            return java.util.List.of(new int[0]);
        }
        java.util.List<int[]> all = new java.util.ArrayList<>();
        for (int[] shorter : orders(n - 1)) {
            for (int place = 0; place < n; place++) {
                int[] order = new int[n];
                System.arraycopy(shorter, 0, order, 0, place);
                order[place] = n - 1;
                System.arraycopy(shorter, place, order, place + 1, n - 1 - place);
                all.add(order);
            }
        }
        return all;
    }

    /** Ideal gas: absolute pressures in bar for densities, litres for volumes. */
    private static Problem problem(SessionRequest request) {
        double ambient = 1.01325;
        int bottles = request.bottles().size();
        double[] stop = request.bottles().stream()
                .mapToDouble(b -> b.bottle().target().toBar() + ambient)
                .toArray();
        var bank = request.supplies().stream()
                .sorted(java.util.Comparator.comparing(s -> s.reading()))
                .toList();
        return new Problem(
                new Problem.Vessels(
                        bank.stream()
                                .mapToDouble(s -> s.waterVolume().toLitres())
                                .toArray(),
                        bank.stream()
                                .mapToDouble(s -> s.reading().toBar() + ambient)
                                .toArray()),
                new Problem.Vessels(
                        request.bottles().stream()
                                .mapToDouble(b -> b.bottle().waterVolume().toLitres())
                                .toArray(),
                        request.bottles().stream()
                                .mapToDouble(b -> b.bottle().reading().toBar() + ambient)
                                .toArray()),
                stop,
                stop,
                IntStream.range(0, bottles).map(b -> 1).toArray(),
                new Problem.Vessels(new double[] {0}, new double[] {ambient}));
    }
}
