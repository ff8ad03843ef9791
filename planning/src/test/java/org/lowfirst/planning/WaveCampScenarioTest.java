package org.lowfirst.planning;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.gas.PressureUnit.BAR;
import static org.lowfirst.planning.Planned.bottle;
import static org.lowfirst.planning.Planned.bottleReadings;
import static org.lowfirst.planning.Planned.order;
import static org.lowfirst.planning.Planned.oxygen;
import static org.lowfirst.planning.Planned.plan;
import static org.lowfirst.planning.Planned.readings;
import static org.lowfirst.planning.Planned.standardLitres;
import static org.lowfirst.planning.Planned.supply;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/**
 * A wave camp whose bank cannot finish a bottle: 15 C, P 44, Q 97, R 131 bar (50 L), a 10 L bottle from 20 to 150 bar.
 *
 * <p>Source of the expected numbers: worked outside this project with real oxygen (CoolProp 8.0.0), given to 0.1 bar.
 */
final class WaveCampScenarioTest {

    private static final Offset<Double> TENTH = within(0.0501);

    private final FillPlanner planner = oxygen(Temperature.ofCelsius(15), ReferenceRule.EU);
    private final BottleToFill bottle = bottle("W-1", 10, 20, 150, 200, BAR);
    private final SupplyState p = supply("P", 50, 44, BAR);
    private final SupplyState q = supply("Q", 50, 97, BAR);
    private final SupplyState r = supply("R", 50, 131, BAR);
    private final FillPlan plan = plan(planner, new FillRequest(List.of(p, q, r), bottle, GaugePressure.ofBar(200)));

    @Test
    void beforeAnythingIsOpenedItSaysHowFarTheBankGoes() {
        assertThat(plan.reaches()).isFalse();
        assertThat(plan.fill().finalReading().toBar()).isEqualTo(123.8, TENTH);
        assertThat(requireNonNull(plan.shortBy()).toBar()).isEqualTo(26, within(0.5));
        assertThat(requireNonNull(plan.remedies()).lowerTarget())
                .isEqualTo(plan.fill().finalReading());
    }

    @Test
    void filledAnywayItTakesElevenHundredLitres() {
        assertThat(bottleReadings(plan, BAR)).containsExactly(new double[] {40.0, 87.7, 123.8}, TENTH);
        assertThat(standardLitres(plan.fill().delivered())).isEqualTo(1108, within(0.5));
    }

    @Test
    void theAdviceIsToExchangeTheLowest() {
        ExchangeChoice first = requireNonNull(plan.remedies()).exchanges().get(0);
        assertThat(first.supply()).isEqualTo("P");
        assertThat(first.reaches()).isTrue();
        assertThat(requireNonNull(first.withFull()).fillsLeft().complete()).isEqualTo(5);
        assertThat(plan.notes(ShownUnits.METRIC))
                .startsWith(
                        "The bank brings W-1 to about 124 bar, 26 bar short of 150 bar. It reaches a target of 123 bar.",
                        "A full supply in the place of P would finish it; such fills then: 5, and a 6th to about 143 bar.");
    }

    @Test
    void withoutKnowingWhatAFullOneReadsItNamesTheLeastThatWouldDo() {
        FillPlan unknown = plan(planner, List.of(p, q, r), bottle);
        ExchangeChoice first = requireNonNull(unknown.remedies()).exchanges().get(0);
        assertThat(first.supply()).isEqualTo("P");
        assertThat(first.withFull()).isNull();
        GaugePressure least = requireNonNull(first.leastReading());
        assertThat(with(least.pascals() + 1).reaches()).isTrue();
        assertThat(with(least.pascals() - 1).reaches()).isFalse();
    }

    @Test
    void afterTheExchangeOrderAndRanksFollow() {
        SupplyState p2 = supply("P2", 50, 200, BAR);
        FillPlan next = plan(planner, List.of(p2, q, r), bottle);
        assertThat(order(next)).containsExactly("Q", "R", "P2");
        assertThat(next.fill().steps()).extracting(Step::rank).containsExactly(1, 2, 3);
        assertThat(next.fill().bankAfter()).extracting(RankedSupply::name).containsExactly("Q", "R", "P2");
        assertThat(bottleReadings(next, BAR)).containsExactly(new double[] {84.5, 123.2, 150}, TENTH);
        assertThat(readings(next.fill().bankAfter(), BAR)[2]).isEqualTo(194.3, TENTH);
        assertThat(next.fillsLeft().complete()).isEqualTo(5);
        assertThat(requireNonNull(next.fillsLeft().nextStopsAt()).toBar()).isEqualTo(143.3, TENTH);
    }

    @Test
    void aDeliveryThatReadsLessTakesTheRankOfItsReading() {
        SupplyState p2 = supply("P2", 50, 120, BAR);
        FillPlan next = plan(planner, List.of(p2, q, r), bottle);
        assertThat(order(next)).containsExactly("Q", "P2", "R");
    }

    private FillPlan with(double pascals) {
        SupplyState fresh = new SupplyState("P2", p.waterVolume(), new GaugePressure(pascals));
        return plan(planner, List.of(fresh, q, r), bottle);
    }
}
