package org.lowfirst.planning;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.gas.PressureUnit.BAR;
import static org.lowfirst.planning.Planned.bank;
import static org.lowfirst.planning.Planned.bottle;
import static org.lowfirst.planning.Planned.bottleReadings;
import static org.lowfirst.planning.Planned.order;
import static org.lowfirst.planning.Planned.oxygen;
import static org.lowfirst.planning.Planned.plan;
import static org.lowfirst.planning.Planned.readings;
import static org.lowfirst.planning.Planned.standardLitres;
import static org.lowfirst.planning.Planned.states;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.Temperature;

/**
 * A gliding club's plain fill: 20 C, supplies of 50 L at 62, 118 and 190 bar, a 5 L bottle from 40 to 150 bar.
 *
 * <p>Source of the expected numbers: worked outside this project with real oxygen (CoolProp 8.0.0). The scenario asks for 1 bar
 * and 1.5 % of litres; the numbers are given to 0.1 bar and hold to that.
 */
final class PlainFillScenarioTest {

    private static final Offset<Double> TENTH = within(0.0501);

    private final FillPlanner planner = oxygen(Temperature.ofCelsius(20), ReferenceRule.EU);
    private final List<SupplyState> bank = bank(50, BAR, 62, 118, 190);
    private final BottleToFill bottle = bottle("M-03", 5, 40, 150, 200, BAR);
    private final FillPlan plan = plan(planner, bank, bottle);

    @Test
    void lowestFirstWithTheFullestLast() {
        assertThat(order(plan)).containsExactly("A", "B", "C");
        assertThat(bottleReadings(plan, BAR)).containsExactly(new double[] {60.0, 112.8, 150}, TENTH);
        assertThat(plan.fill().skipped()).isEmpty();
    }

    @Test
    void theBankAfterwardsAndTheGasThatWentIn() {
        assertThat(readings(plan.fill().bankAfter(), BAR)).containsExactly(new double[] {60.0, 112.8, 186.1}, TENTH);
        assertThat(standardLitres(plan.fill().delivered())).isEqualTo(578, within(0.5));
    }

    @Test
    void sevenFillsAreLeftAndAnEighthStopsShort() {
        assertThat(plan.fillsLeft().complete()).isEqualTo(7);
        assertThat(requireNonNull(plan.fillsLeft().nextStopsAt()).toBar()).isEqualTo(147.1, TENTH);
        assertThat(plan.fillsLeft().inWords(ShownUnits.METRIC)).isEqualTo("7, and an 8th to about 147 bar");
    }

    @Test
    void afterSevenFillsTheBankReadsAsWorked() {
        List<SupplyState> left = bank;
        for (int i = 0; i < 7; i++) {
            FillPlan next = plan(planner, left, bottle);
            assertThat(next.reaches()).isTrue();
            assertThat(next.fillsLeft().complete()).isEqualTo(7 - i);
            left = states(next.fill().bankAfter());
        }
        assertThat(left.stream().mapToDouble(s -> s.reading().toBar()).toArray())
                .containsExactly(new double[] {51.3, 87.4, 153.5}, TENTH);
        assertThat(plan(planner, left, bottle).reaches()).isFalse();
    }

    @Test
    void theFullestFirstHabitGivesThree() {
        assertThat(plan.fullestFirst().fillsLeft().complete()).isEqualTo(3);
        assertThat(plan.fullestFirst().savedFills()).isEqualTo(4);
        assertThat(plan.notes(ShownUnits.METRIC))
                .containsExactly(
                        "Opening the fullest supply first would give 3 such fills from this bank; lowest first gives 7.");
    }
}
