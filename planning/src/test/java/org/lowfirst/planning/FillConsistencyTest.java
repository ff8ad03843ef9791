package org.lowfirst.planning;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Volume;
import org.lowfirst.transfer.Ending;
import org.lowfirst.transfer.Hose;
import org.lowfirst.transfer.Stage;
import org.lowfirst.transfer.StageResult;
import org.lowfirst.transfer.Vessel;

/** Identities of one plan on seeded random banks. */
final class FillConsistencyTest {

    private static final double RELATIVE = 1e-12;

    static LongStream seeds() {
        return LongStream.range(0, 600);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void massIsConserved(long seed) {
        RandomBank random = new RandomBank(seed);
        FillPlan plan = random.plan();
        Isotherm line = line(random);
        double before = random.supplies.stream()
                .mapToDouble(s -> vessel(s, random, line).contents().moles())
                .sum();
        double after = plan.fill().bankAfter().stream()
                .mapToDouble(s -> s.contents().moles())
                .sum();
        double hose_m3 = random.conditions.hose().cubicMetres();
        double lost = plan.fill().delivered().moles() + plan.fill().vented().moles();
        assertThat(after + lost).isEqualTo(before, within(RELATIVE * before));
        if (hose_m3 == 0.0) {
            assertThat(plan.fill().vented()).isEqualTo(Amount.NONE);
        }
        double moved =
                plan.fill().steps().stream().mapToDouble(s -> s.moved().moles()).sum();
        assertThat(moved).isEqualTo(plan.fill().delivered().moles(), within(RELATIVE * before));
    }

    /** Holds when every supply may be opened and the hose is left out of account. */
    @ParameterizedTest
    @MethodSource("seeds")
    void rankOrderNeverChangesInACorrectCascade(long seed) {
        RandomBank random = new RandomBank(seed);
        Conditions noHose = random.conditions.withHose(new Volume(0));
        List<SupplyState> open = random.supplies.stream()
                .map(s -> new SupplyState(s.name(), s.waterVolume(), s.reading()))
                .toList();
        FillPlan plan = Planned.plan(FillPlanner.under(noHose), open, random.bottle);
        List<String> before = open.stream()
                .sorted(Comparator.comparing(SupplyState::reading))
                .map(SupplyState::name)
                .toList();
        assertThat(plan.fill().bankAfter()).extracting(RankedSupply::name).containsExactlyElementsOf(before);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theBankAfterIsRankedByReading(long seed) {
        List<RankedSupply> after = new RandomBank(seed).plan().fill().bankAfter();
        assertThat(after).isSortedAccordingTo(Comparator.comparing(RankedSupply::reading));
        assertThat(after).extracting(RankedSupply::rank).isSorted().doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theKernelAgreesWithTheStagesOneByOne(long seed) {
        RandomBank random = new RandomBank(seed);
        FillPlan plan = random.plan();
        Isotherm line = line(random);
        Hose hose = Hose.purged(random.conditions.hose(), random.conditions.ambient(), line);
        Vessel bottle = Vessel.at(
                random.bottle.waterVolume(), random.bottle.reading().toAbsolute(random.conditions.ambient()), line);
        double stop_molPerM3 = line.density_molPerM3(
                plan.stop().reading().toAbsolute(random.conditions.ambient()).pascals());
        List<SupplyState> byReading = new ArrayList<>(random.supplies);
        byReading.sort(Comparator.comparing(SupplyState::reading));
        int step = 0;
        boolean done = false;
        for (SupplyState supply : byReading) {
            if (supply.heldBack() || done) {
                continue;
            }
            StageResult result = Stage.join(vessel(supply, random, line), hose, bottle, new Density(stop_molPerM3));
            if (result.ending() == Ending.NOTHING_MOVED) {
                continue;
            }
            Step planned = plan.fill().steps().get(step++);
            assertThat(planned.supply()).isEqualTo(supply.name());
            assertThat(planned.ends()).isEqualTo(result.ending());
            double moved = result.moved().moles();
            assertThat(planned.moved().moles())
                    .isEqualTo(moved, within(RELATIVE * bottle.contents().moles() + RELATIVE));
            hose = result.hose();
            bottle = result.bottle();
            done = result.ending() == Ending.TARGET;
        }
        assertThat(plan.fill().steps()).hasSize(step);
        assertThat(plan.reaches()).isEqualTo(done);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everySupplyIsEitherAStepOrSkippedWithATrueReason(long seed) {
        RandomBank random = new RandomBank(seed);
        FillPlan plan = random.plan();
        assertThat(plan.fill().steps().size() + plan.fill().skipped().size()).isEqualTo(random.supplies.size());
        GaugePressure bottle = random.bottle.reading();
        for (Step step : plan.fill().steps()) {
            assertThat(step.bottle().before()).isEqualTo(bottle);
            assertThat(step.bottle().after()).isGreaterThan(bottle);
            assertThat(step.bottle().after()).isLessThanOrEqualTo(plan.stop().neverAbove());
            assertThat(step.supplyReading().after())
                    .isLessThan(step.supplyReading().before());
            bottle = step.bottle().after();
        }
        assertThat(plan.fill().finalReading()).isEqualTo(bottle);
        for (Skipped skipped : plan.fill().skipped()) {
            switch (skipped.reason()) {
                case NOT_ABOVE_BOTTLE -> assertThat(skipped.reading()).isLessThanOrEqualTo(skipped.bottle());
                case NOTHING_LEFT_AFTER_HOSE -> {
                    assertThat(skipped.reading()).isGreaterThan(skipped.bottle());
                    assertThat(random.conditions.hose().cubicMetres()).isPositive();
                }
                case NOT_NEEDED -> assertThat(plan.reaches()).isTrue();
                case HELD_BACK ->
                    assertThat(random.supplies).anyMatch(s -> s.name().equals(skipped.supply()) && s.heldBack());
                default -> throw new AssertionError(skipped.reason());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void reachingShortfallFillsLeftAndRemediesTellOneStory(long seed) {
        FillPlan plan = new RandomBank(seed).plan();
        if (plan.reaches()) {
            assertThat(plan.fill().finalReading()).isEqualTo(plan.stop().reading());
            assertThat(plan.shortBy()).isNull();
            assertThat(plan.remedies()).isNull();
            assertThat(plan.fillsLeft().complete()).isPositive();
        } else {
            assertThat(plan.fill().finalReading()).isLessThan(plan.stop().reading());
            assertThat(requireNonNull(plan.shortBy()).pascals()).isPositive();
            assertThat(plan.remedies()).isNotNull();
            assertThat(plan.fillsLeft().complete()).isZero();
            assertThat(requireNonNull(plan.fillsLeft().nextStopsAt()).toBar())
                    .isEqualTo(plan.fill().finalReading().toBar(), within(1e-9));
        }
        assertThat(plan.fullestFirst().savedFills()).isNotNegative();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theSameInputGivesTheSamePlan(long seed) {
        FillPlan first = new RandomBank(seed).plan();
        RandomBank again = new RandomBank(seed);
        assertThat(again.plan()).hasToString(first.toString());
        assertThat(again.plan()).isEqualTo(again.plan());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void pausingAtALowerTargetAndGoingOnChangesNothing(long seed) {
        RandomBank random = new RandomBank(seed);
        FillPlanner planner = FillPlanner.under(random.conditions.withHose(new Volume(0)));
        FillPlan once = Planned.plan(planner, random.supplies, random.bottle);
        double from = random.bottle.reading().pascals();
        double to = once.fill().finalReading().pascals();
        FillPlan firstPart = Planned.plan(
                planner, random.supplies, random.bottle.withTarget(new GaugePressure(from + 0.6 * (to - from))));
        BottleToFill paused = new BottleToFill(
                random.bottle.name(),
                random.bottle.waterVolume(),
                firstPart.fill().finalReading(),
                random.bottle.target(),
                random.bottle.servicePressure());
        FillPlan secondPart =
                Planned.plan(planner, Planned.states(firstPart.fill().bankAfter()), paused);
        assertThat(secondPart.fill().finalReading().pascals()).isEqualTo(to, within(0.01));
        double[] bank = Planned.readings(once.fill().bankAfter(), PressureUnit.BAR);
        assertThat(Planned.readings(secondPart.fill().bankAfter(), PressureUnit.BAR))
                .containsExactly(bank, within(1e-7));
    }

    private static Isotherm line(RandomBank random) {
        return random.conditions.gas().isotherm(random.conditions.bench()).orElseThrow();
    }

    private static Vessel vessel(SupplyState supply, RandomBank random, Isotherm line) {
        return Vessel.at(supply.waterVolume(), supply.reading().toAbsolute(random.conditions.ambient()), line);
    }
}
