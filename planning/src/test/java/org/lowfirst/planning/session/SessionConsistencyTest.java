package org.lowfirst.planning.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.RankedSupply;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.SupplyState;
import org.lowfirst.transfer.Ending;

/** Identities of session plans on seeded random sessions of oxygen. */
final class SessionConsistencyTest {

    private static final Effort LITTLE = new Effort(60_000, 60);

    private final SessionPlanner planner = Sessions.oxygen();
    private final Isotherm line =
            Oxygen.schmidtWagner().isotherm(Sessions.BENCH).orElseThrow();

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void massIsConserved(long seed) {
        SessionRequest request = request(seed);
        SessionPlan plan = Sessions.plan(planner, request, LITTLE);
        double before = request.supplies().stream().mapToDouble(this::moles).sum();
        double after = plan.course().bankAfter().stream()
                .mapToDouble(s -> s.contents().moles())
                .sum();
        double moved = plan.course().steps().stream()
                .mapToDouble(s -> s.moved().moles())
                .sum();
        assertThat(after + moved).isEqualTo(before, within(1e-12 * before));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyStepStartsFromWhatTheOneBeforeLeft(long seed) {
        SessionRequest request = request(seed);
        SessionPlan plan = Sessions.plan(planner, request, LITTLE);
        Map<String, GaugePressure> reads = new HashMap<>();
        request.supplies().forEach(s -> reads.put("supply " + s.name(), s.reading()));
        request.bottles()
                .forEach(
                        b -> reads.put("bottle " + b.bottle().name(), b.bottle().reading()));
        Map<String, GaugePressure> lastUsed = new HashMap<>();
        for (SessionStep step : plan.course().steps()) {
            assertThat(step.bottleReading().before()).isEqualTo(reads.get("bottle " + step.bottle()));
            assertThat(step.supplyReading().before()).isEqualTo(reads.get("supply " + step.supply()));
            assertThat(step.supplyReading().before())
                    .isGreaterThan(step.bottleReading().before());
            if (step.ends() == Ending.EQUAL) {
                assertThat(step.bottleReading().after())
                        .isEqualTo(step.supplyReading().after());
            }
            reads.put("bottle " + step.bottle(), step.bottleReading().after());
            reads.put("supply " + step.supply(), step.supplyReading().after());
            lastUsed.put(step.bottle(), step.bottleReading().after());
        }
        for (BottleEnd end : plan.course().ends()) {
            assertThat(end.reading()).isEqualTo(reads.get("bottle " + end.name()));
            if (end.readiness() == Readiness.FULL) {
                assertThat(end.reading()).isEqualTo(end.stop());
            } else {
                assertThat(lastUsed).doesNotContainKey(end.name());
            }
        }
        for (RankedSupply supply : plan.course().bankAfter()) {
            assertThat(supply.reading()).isEqualTo(reads.get("supply " + supply.name()));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noBottleGoesBackToALowerSupplyOrTwiceOnOne(long seed) {
        SessionRequest request = request(seed);
        SessionPlan plan = Sessions.plan(planner, request, LITTLE);
        List<String> ranked = request.supplies().stream()
                .sorted(java.util.Comparator.comparing(SupplyState::reading))
                .map(SupplyState::name)
                .toList();
        Map<String, Integer> highest = new HashMap<>();
        Set<String> pairs = new HashSet<>();
        for (SessionStep step : plan.course().steps()) {
            int rank = ranked.indexOf(step.supply());
            assertThat(rank).isGreaterThan(highest.getOrDefault(step.bottle(), -1));
            highest.put(step.bottle(), rank);
            assertThat(pairs.add(step.bottle() + step.supply())).isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noHabitDoesBetter(long seed) {
        SessionPlan plan = Sessions.plan(planner, request(seed), LITTLE);
        for (HabitResult habit : plan.advice().habits()) {
            assertThat(habit.ready()).isLessThanOrEqualTo(plan.score().ready());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void changesAndTimesAreThoseOfTheSteps(long seed) {
        SessionRequest request = request(seed);
        SessionPlan plan = Sessions.plan(planner, request, LITTLE);
        int changes = 0;
        double clock = 0;
        String bottle = "";
        String supply = "";
        for (SessionStep step : plan.course().steps()) {
            assertThat(step.changes().hose()).isEqualTo(!step.bottle().equals(bottle));
            assertThat(step.changes().supply()).isEqualTo(!step.supply().equals(supply));
            changes += step.changes().count();
            assertThat(step.start_s()).isGreaterThanOrEqualTo(clock);
            double rise = step.bottleReading().after().pascals()
                    - step.bottleReading().before().pascals();
            clock = step.start_s() + rise / request.pace().rise_PaPerS();
            bottle = step.bottle();
            supply = step.supply();
        }
        assertThat(plan.score().changes()).isEqualTo(changes);
        assertThat(plan.score().time_s()).isEqualTo(clock, within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theSameInputGivesTheSamePlan(long seed) {
        SessionPlan once = Sessions.plan(planner, request(seed), LITTLE);
        SessionPlan again = Sessions.plan(Sessions.oxygen(), request(seed), LITTLE);
        assertThat(again.course()).hasToString(once.course().toString());
        assertThat(again.proof()).isEqualTo(once.proof());
        assertThat(again.advice()).isEqualTo(once.advice());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void withAHoseEveryBottlePromisedStillComesToItsStop(long seed) {
        Conditions conditions = Conditions.of(Oxygen.schmidtWagner(), Sessions.BENCH, ReferenceRule.EU)
                .withHose(Volume.ofLitres(0.3));
        SessionPlan plan = Sessions.plan(SessionPlanner.under(conditions), request(seed), LITTLE);
        assertThat(plan.course().ends().stream()
                        .filter(end -> end.readiness() != Readiness.NOT_READY)
                        .count())
                .isEqualTo(plan.score().ready());
        assertThat(plan.course().ends()).allSatisfy(end -> {
            if (end.readiness() == Readiness.FULL) {
                assertThat(end.reading()).isEqualTo(end.stop());
            }
        });
        SessionPlan without = Sessions.plan(planner, request(seed), LITTLE);
        assertThat(plan.score().ready()).isLessThanOrEqualTo(without.proof().readyAtMost());
    }

    /** Small and large sessions, banks that suffice and banks that do not. */
    private static SessionRequest request(long seed) {
        int bottles = 2 + (int) (seed % 11);
        return Sessions.random(
                seed, 2 + (int) (seed % 5), bottles, seed % 2 == 0, seed % 3 == 0, seed % 4 == 0 ? 2.5 : 1.0);
    }

    private double moles(SupplyState supply) {
        double p_Pa = supply.reading().toAbsolute(StandardAtmosphere.PRESSURE).pascals();
        return supply.waterVolume().cubicMetres() * line.density_molPerM3(p_Pa);
    }
}
