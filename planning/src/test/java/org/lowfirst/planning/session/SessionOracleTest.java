package org.lowfirst.planning.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.planning.Turn;

/** Against every plan there is, on small seeded sessions. */
final class SessionOracleTest {

    /** Moles in a bar litre at the bench. */
    private static final double MOL_PER_BAR_L =
            1e5 * 1e-3 / (IdealGas.MOLAR_GAS_CONSTANT_J_PER_MOL_K * Sessions.BENCH.kelvin());

    private final SessionPlanner planner = Sessions.ideal();

    static LongStream many() {
        return LongStream.range(0, 150);
    }

    static LongStream some() {
        return LongStream.range(0, 12);
    }

    @ParameterizedTest
    @MethodSource("many")
    void threeBottlesOnThreeEqualSupplies(long seed) {
        asGoodAsEveryPlan(Sessions.random(seed, 3, 3, true, seed % 2 == 0, 1.5));
    }

    @ParameterizedTest
    @MethodSource("many")
    void fourBottlesOnTwoEqualSupplies(long seed) {
        asGoodAsEveryPlan(Sessions.random(seed, 2, 4, true, seed % 2 == 0, 1.5));
    }

    @ParameterizedTest
    @MethodSource("some")
    void fourBottlesOnThreeEqualSupplies(long seed) {
        asGoodAsEveryPlan(Sessions.random(seed, 3, 4, true, seed % 2 == 0, 1.5));
    }

    /**
     * With supplies of different sizes a bottle may, now and then, leave a little more gas by going back to a supply of lower rank;
     * such plans are not plans here, so only the number ready is compared.
     */
    @ParameterizedTest
    @MethodSource("many")
    void noPlanMakesMoreReadyFromSuppliesOfDifferentSizes(long seed) {
        SessionRequest request = Sessions.random(seed, 3, 3, false, seed % 2 == 0, 1.0);
        SessionPlan plan = Sessions.plan(planner, request);
        assertThat(plan.proof().bestReady()).isTrue();
        assertThat(plan.score().ready()).isEqualTo(EveryPlan.of(request).ready());
    }

    /** A supply that is used first serves every bottle before another supply is opened, as in a single fill. */
    @ParameterizedTest
    @MethodSource("many")
    void asGoodAsEveryPlanThatUsesOneSupplyFirst(long seed) {
        SessionRequest drawn = Sessions.random(seed, 3, 3, true, seed % 2 == 0, 1.5);
        List<SupplyState> bank = new ArrayList<>(drawn.supplies());
        int first = (int) (seed % 3);
        bank.set(first, bank.get(first).in(Turn.FIRST));
        SessionRequest request = new SessionRequest(bank, drawn.bottles());
        SessionPlan plan = Sessions.plan(planner, request);
        EveryPlan every = EveryPlan.usingFirst(request, first);
        assertThat(plan.proof().bestReady()).isTrue();
        assertThat(plan.proof().bestGas()).isTrue();
        assertThat(plan.score().ready()).isEqualTo(every.ready());
        double most_mol = every.gasLeft_barL() * MOL_PER_BAR_L;
        double step_mol = plan.proof().gasStep().moles();
        assertThat(plan.score().gasLeft().moles()).isBetween(most_mol - 1.0001 * step_mol, most_mol + 1e-6);
        String name = bank.get(first).name();
        for (SessionStep step : plan.course().steps()) {
            boolean here = step.supply().equals(name);
            assertThat(here && opened(plan, step.bottle(), step))
                    .as("before others")
                    .isFalse();
        }
    }

    /** Whether a bottle was on another supply before this stage. */
    private static boolean opened(SessionPlan plan, String bottle, SessionStep before) {
        return plan.course().steps().stream()
                .takeWhile(step -> !step.equals(before))
                .anyMatch(step -> step.bottle().equals(bottle));
    }

    private void asGoodAsEveryPlan(SessionRequest request) {
        SessionPlan plan = Sessions.plan(planner, request);
        EveryPlan every = EveryPlan.of(request);
        assertThat(plan.proof().bestReady()).isTrue();
        assertThat(plan.proof().bestGas()).isTrue();
        assertThat(plan.score().ready()).isEqualTo(every.ready());
        double most_mol = every.gasLeft_barL() * MOL_PER_BAR_L;
        double step_mol = plan.proof().gasStep().moles();
        assertThat(plan.score().gasLeft().moles()).isBetween(most_mol - 1.0001 * step_mol, most_mol + 1e-6);
        assertThat(plan.proof().gasAtMost().moles()).isGreaterThanOrEqualTo(most_mol - 1e-6);
    }
}
