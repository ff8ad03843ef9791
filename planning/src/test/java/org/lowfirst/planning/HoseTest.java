package org.lowfirst.planning;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.gas.PressureUnit.BAR;
import static org.lowfirst.planning.Planned.bank;
import static org.lowfirst.planning.Planned.bottle;
import static org.lowfirst.planning.Planned.plan;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/** Ideal gas, so that every number can be worked by hand with pressure times volume. */
final class HoseTest {

    private final Conditions noHose =
            Conditions.of(new IdealGas("oxygen", 0.0319988), Temperature.ofCelsius(20), ReferenceRule.EU);
    private final FillPlanner planner = FillPlanner.under(noHose.withHose(Volume.ofLitres(1)));

    @Test
    void theHoseSharesInTheFirstStageAndKeepsTheSuppliesPressureForTheSecond() {
        FillPlan plan = plan(planner, bank(50, BAR, 60, 120), bottle("R1", 5, 10, 200, 200, BAR));
        double first = (50 * 60 + 1 * 0 + 5 * 10) / 56.0;
        double second = (50 * 120 + 1 * first + 5 * first) / 56.0;
        assertThat(Planned.bottleReadings(plan, BAR)).containsExactly(new double[] {first, second}, within(1e-9));
        double vented_mol = 1e-3 * second * 1e5 / (IdealGas.MOLAR_GAS_CONSTANT_J_PER_MOL_K * 293.15);
        assertThat(plan.fill().vented().moles()).isEqualTo(vented_mol, within(1e-9));
    }

    @Test
    void aSupplyThatTheHoseBringsDownToTheBottleIsSkippedWithThatReason() {
        FillPlan plan = plan(planner, bank(50, BAR, 61, 150), bottle("R1", 5, 60, 100, 200, BAR));
        assertThat(plan.fill().skipped()).singleElement().satisfies(skipped -> {
            assertThat(skipped.supply()).isEqualTo("A");
            assertThat(skipped.reason()).isEqualTo(SkipReason.NOTHING_LEFT_AFTER_HOSE);
        });
        assertThat(plan(FillPlanner.under(noHose), bank(50, BAR, 61, 150), bottle("R1", 5, 60, 100, 200, BAR))
                        .fill()
                        .skipped())
                .isEmpty();
    }

    @Test
    void aHoseNeverMakesMoreFills() {
        List<SupplyState> bank = bank(50, BAR, 62, 118, 190);
        BottleToFill bottle = bottle("R1", 5, 40, 150, 200, BAR);
        int before = Integer.MAX_VALUE;
        for (double litres : new double[] {0, 0.1, 0.5, 1, 3}) {
            FillPlanner with = FillPlanner.under(noHose.withHose(Volume.ofLitres(litres)));
            int fills = plan(with, bank, bottle).fillsLeft().complete();
            assertThat(fills).isLessThanOrEqualTo(before);
            before = fills;
        }
    }

    @Test
    void whatTheHoseLosesPerBottleIsCountedInTheBank() {
        FillPlan plan = plan(planner, bank(50, BAR, 190), bottle("R1", 5, 40, 150, 200, BAR));
        double after = plan.fill().bankAfter().get(0).reading().toBar();
        // supply and hose give 5 L times 110 bar together, then the hose is lost
        assertThat(after).isEqualTo((50 * 190 - 5 * 110) / 51.0, within(1e-9));
        assertThat(requireNonNull(plan.fillsLeft().nextStopsAt()).toBar()).isLessThan(150);
    }
}
