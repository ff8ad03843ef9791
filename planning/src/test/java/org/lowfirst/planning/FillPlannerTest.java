package org.lowfirst.planning;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.gas.PressureUnit.BAR;
import static org.lowfirst.planning.Planned.bank;
import static org.lowfirst.planning.Planned.bottle;
import static org.lowfirst.planning.Planned.order;
import static org.lowfirst.planning.Planned.oxygen;
import static org.lowfirst.planning.Planned.plan;
import static org.lowfirst.planning.Planned.supply;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

final class FillPlannerTest {

    private final FillPlanner planner = oxygen(Temperature.ofCelsius(20), ReferenceRule.EU);

    @Test
    void suppliesAreTakenByReadingWhateverTheOrderGiven() {
        List<SupplyState> mixed =
                List.of(supply("high", 50, 190, BAR), supply("low", 50, 62, BAR), supply("mid", 50, 118, BAR));
        FillPlan plan = plan(planner, mixed, bottle("R1", 5, 40, 150, 200, BAR));
        assertThat(order(plan)).containsExactly("low", "mid", "high");
    }

    @Test
    void aBottleFullerThanEverySupplyIsPlannedAndSaysSo() {
        FillPlan plan = plan(planner, bank(50, BAR, 20, 90), bottle("R1", 5, 100, 150, 200, BAR));
        assertThat(plan.reaches()).isFalse();
        assertThat(plan.fill().steps()).isEmpty();
        assertThat(plan.fill().skipped()).extracting(Skipped::reason).containsOnly(SkipReason.NOT_ABOVE_BOTTLE);
        assertThat(plan.fill().finalReading()).isEqualTo(GaugePressure.ofBar(100));
        assertThat(requireNonNull(plan.remedies()).lowerTarget()).isNull();
        assertThat(requireNonNull(plan.fillsLeft().nextStopsAt()).toBar()).isEqualTo(100, within(1e-9));
        assertThat(plan.notes(ShownUnits.METRIC))
                .startsWith("No supply that may be opened is above R1, which reads 100 bar: none can give it anything.")
                .anyMatch(note -> note.startsWith("A supply that reads at least "));
    }

    @Test
    void aBottleAtItsTargetNeedsNoValveOpened() {
        FillPlan plan = plan(planner, bank(50, BAR, 20, 190), bottle("R1", 5, 150, 150, 200, BAR));
        assertThat(plan.reaches()).isTrue();
        assertThat(plan.fill().steps()).isEmpty();
        assertThat(plan.fill().skipped()).extracting(Skipped::reason).containsOnly(SkipReason.NOT_NEEDED);
        assertThat(plan.fillsLeft().inWords(ShownUnits.METRIC)).isEqualTo("none needed");
        assertThat(plan.notes(ShownUnits.METRIC)).containsExactly("R1 is at its target already; no valve is opened.");
    }

    @Test
    void aFullerSupplyIsNotNeededOnceTheTargetIsReached() {
        FillPlan plan = plan(planner, bank(50, BAR, 160, 190), bottle("R1", 2, 100, 120, 200, BAR));
        assertThat(order(plan)).containsExactly("A");
        assertThat(plan.fill().skipped()).singleElement().satisfies(skipped -> {
            assertThat(skipped.supply()).isEqualTo("B");
            assertThat(skipped.rank()).isEqualTo(2);
            assertThat(skipped.reason()).isEqualTo(SkipReason.NOT_NEEDED);
        });
    }

    @Test
    void aSupplyHeldBackKeepsItsRankAndStaysShut() {
        List<SupplyState> bank =
                List.of(supply("A", 50, 62, BAR), supply("B", 50, 118, BAR).holdBack(), supply("C", 50, 190, BAR));
        FillPlan plan = plan(planner, bank, bottle("R1", 5, 40, 150, 200, BAR));
        assertThat(order(plan)).containsExactly("A", "C");
        assertThat(plan.fill().skipped()).extracting(Skipped::reason).containsExactly(SkipReason.HELD_BACK);
        assertThat(plan.fill().bankAfter()).extracting(RankedSupply::name).containsExactly("A", "B", "C");
        assertThat(plan.fillsLeft().complete()).isLessThan(7);
    }

    @Test
    void aTinyTopUpFromALargeBankIsNotCountedForEver() {
        FillPlan plan = plan(planner, bank(50, BAR, 200, 220, 220, 220), bottle("R1", 0.1, 99.9, 100, 200, BAR));
        assertThat(plan.fillsLeft()).isEqualTo(new FillsLeft(FillsLeft.MOST, null));
        assertThat(plan.fillsLeft().inWords(ShownUnits.METRIC)).isEqualTo("9999 or more");
    }

    @Test
    void thePlanForTheSameBottleTwiceInAListUsesWhatTheFirstLeft() {
        InOrderOutcome outcome = planner.planInOrder(
                bank(50, BAR, 62, 118, 190),
                List.of(bottle("R1", 5, 40, 150, 200, BAR), bottle("R2", 5, 40, 150, 200, BAR)),
                null);
        assertThat(outcome).isInstanceOf(PlansInOrder.class);
        PlansInOrder plans = (PlansInOrder) outcome;
        assertThat(plans.plans()).extracting(p -> p.fillsLeft().complete()).containsExactly(7, 6);
        assertThat(plans.plans().get(1).request().supplies())
                .extracting(SupplyState::reading)
                .containsExactlyElementsOf(plans.plans().get(0).fill().bankAfter().stream()
                        .map(RankedSupply::reading)
                        .toList());
    }

    @Test
    void aListWithoutBottlesLeavesTheBankAsItIs() {
        InOrderOutcome outcome = planner.planInOrder(bank(50, BAR, 90, 62), List.of(), null);
        assertThat(outcome).isInstanceOf(PlansInOrder.class);
        assertThat(((PlansInOrder) outcome).bankAfter())
                .extracting(RankedSupply::name)
                .containsExactly("B", "A");
        assertThat(((PlansInOrder) outcome).reachesAll()).isTrue();
    }

    @Test
    void openingTwoSuppliesTogetherCostsFills() {
        FillRequest request = new FillRequest(bank(50, BAR, 62, 118, 190), bottle("R1", 5, 40, 150, 200, BAR));
        TogetherOutcome outcome = planner.openTogether(request, Set.of("A", "C"));
        assertThat(outcome).isInstanceOf(TogetherCost.class);
        TogetherCost cost = (TogetherCost) outcome;
        assertThat(cost.fillsApart().complete()).isEqualTo(7);
        assertThat(cost.fillsTogether().complete()).isZero();
        assertThat(cost.wastedFills()).isEqualTo(7);
        assertThat(cost.level().toBar()).isBetween(62.0, 190.0);
        assertThat(cost.usableTogether().moles()).isZero();
        assertThat(cost.usableApart().moles()).isPositive();
        assertThat(cost.bankTogether()).extracting(RankedSupply::name).containsExactly("B", "A", "C");
        assertThat(planner.openTogether(request, Set.of("A", "X"))).isEqualTo(new PlanRefused.SupplyUnknown("X"));
    }

    @Test
    void theStaircaseRisesToTheStop() {
        FillPlan plan = plan(planner, bank(50, BAR, 62, 118, 190), bottle("R1", 5, 40, 150, 200, BAR));
        Staircase stairs = Staircase.of(plan);
        assertThat(stairs.start()).isEqualTo(GaugePressure.ofBar(40));
        assertThat(stairs.stop()).isEqualTo(GaugePressure.ofBar(150));
        assertThat(stairs.top()).isEqualTo(GaugePressure.ofBar(190));
        assertThat(stairs.treads()).extracting(Staircase.Tread::atStop).containsExactly(false, false, true);
        assertThat(stairs.treads())
                .isSortedAccordingTo(
                        java.util.Comparator.comparing(tread -> tread.bottle().after()));
    }

    @Test
    void fillsLeftReadLikeSpeech() {
        GaugePressure next = GaugePressure.ofPsi(1449.6);
        assertThat(new FillsLeft(0, next).inWords(ShownUnits.US))
                .isEqualTo("none; the next would stop at about 1,450 psi");
        assertThat(new FillsLeft(1, next).inWords(ShownUnits.US)).isEqualTo("1, and a 2nd to about 1,450 psi");
        assertThat(new FillsLeft(2, next).inWords(ShownUnits.US)).startsWith("2, and a 3rd");
        assertThat(new FillsLeft(10, next).inWords(ShownUnits.US)).startsWith("10, and an 11th");
        assertThat(new FillsLeft(11, next).inWords(ShownUnits.US)).startsWith("11, and a 12th");
        assertThat(new FillsLeft(17, next).inWords(ShownUnits.US)).startsWith("17, and an 18th");
        assertThat(new FillsLeft(20, next).inWords(ShownUnits.US)).startsWith("20, and a 21st");
        assertThat(new FillsLeft(110, next).inWords(ShownUnits.US)).startsWith("110, and a 111th");
    }
}
