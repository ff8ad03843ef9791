package org.lowfirst.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.gas.PressureUnit.BAR;
import static org.lowfirst.planning.Planned.bank;
import static org.lowfirst.planning.Planned.bottle;
import static org.lowfirst.planning.Planned.order;
import static org.lowfirst.planning.Planned.oxygen;
import static org.lowfirst.planning.Planned.readings;
import static org.lowfirst.planning.Planned.standardLitres;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.Temperature;

/**
 * Two bottles one after another: 20 C, A 58, B 134, C 181 bar (50 L); 3 L from 35 and 2 L from 60, both to 150 bar.
 *
 * <p>Source of the expected numbers: worked outside this project with real oxygen (CoolProp 8.0.0), given to 0.1 bar.
 */
final class TwoBottlesScenarioTest {

    private static final Offset<Double> TENTH = within(0.0501);

    private final InOrderOutcome outcome = oxygen(Temperature.ofCelsius(20), ReferenceRule.EU)
            .planInOrder(
                    bank(50, BAR, 58, 134, 181),
                    List.of(bottle("B-1", 3, 35, 150, 200, BAR), bottle("B-2", 2, 60, 150, 200, BAR)),
                    null);

    @Test
    void theFirstBottleLeavesTheBankAsWorked() {
        FillPlan first = plans().plans().get(0);
        assertThat(readings(first.fill().bankAfter(), BAR)).containsExactly(new double[] {56.7, 129.6, 179.7}, TENTH);
        assertThat(standardLitres(first.fill().delivered())).isEqualTo(362, within(0.5));
    }

    @Test
    void theSecondSkipsTheLowestAndStartsFromWhatTheFirstLeft() {
        FillPlan second = plans().plans().get(1);
        assertThat(order(second)).containsExactly("B", "C");
        assertThat(second.fill().skipped())
                .extracting(Skipped::supply, Skipped::reason)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("A", SkipReason.NOT_ABOVE_BOTTLE));
        assertThat(readings(plans().bankAfter(), BAR)).containsExactly(new double[] {56.7, 127.0, 178.8}, TENTH);
        assertThat(standardLitres(second.fill().delivered())).isEqualTo(190, within(0.5));
        assertThat(plans().reachesAll()).isTrue();
    }

    @Test
    void massIsConservedOverTheList() {
        double before = plans().plans().get(0).fill().bankAfter().stream()
                        .mapToDouble(s -> s.contents().moles())
                        .sum()
                + plans().plans().get(0).fill().delivered().moles();
        double after = plans().bankAfter().stream()
                .mapToDouble(s -> s.contents().moles())
                .sum();
        double delivered = plans().plans().stream()
                .mapToDouble(plan -> plan.fill().delivered().moles())
                .sum();
        assertThat(after + delivered).isEqualTo(before, within(1e-12 * before));
    }

    private PlansInOrder plans() {
        assertThat(outcome).isInstanceOf(PlansInOrder.class);
        return (PlansInOrder) outcome;
    }
}
