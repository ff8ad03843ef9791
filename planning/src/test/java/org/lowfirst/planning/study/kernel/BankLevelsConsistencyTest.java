package org.lowfirst.planning.study.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.BottleToFill;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillPlanner;
import org.lowfirst.planning.FillRequest;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.planning.RankedSupply;
import org.lowfirst.planning.ReferenceRule;
import org.lowfirst.planning.SupplyState;

/** The counting kernel does what the planner plans, on random banks with and without a hose. */
final class BankLevelsConsistencyTest {

    private static final Temperature T = Temperature.ofCelsius(22);
    private static final Isotherm LINE = Oxygen.schmidtWagner().isotherm(T).orElseThrow();

    @ParameterizedTest
    @ValueSource(doubles = {0.0, 0.3})
    void aFillLeavesTheBankThatThePlanShows(double hoseLitres) {
        Random random = new Random(17);
        FillPlanner planner = FillPlanner.under(
                Conditions.of(Oxygen.schmidtWagner(), T, ReferenceRule.EU).withHose(Volume.ofLitres(hoseLitres)));
        int reached = 0;
        for (int i = 0; i < 500; i++) {
            List<SupplyState> supplies = new ArrayList<>();
            int size = 1 + random.nextInt(6);
            for (int s = 0; s < size; s++) {
                supplies.add(new SupplyState(
                        "S" + s,
                        Volume.ofLitres(5 + 60 * random.nextDouble()),
                        GaugePressure.ofBar(220 * random.nextDouble())));
            }
            double start = 100 * random.nextDouble();
            BottleToFill bottle = new BottleToFill(
                    "R",
                    Volume.ofLitres(1 + 20 * random.nextDouble()),
                    GaugePressure.ofBar(start),
                    GaugePressure.ofBar(start + 1 + 80 * random.nextDouble()),
                    GaugePressure.ofBar(300));
            FillPlan plan = plan(planner, supplies, bottle);
            BankLevels levels = levels(supplies, hoseLitres);
            boolean done = levels.fill(
                    bottle.waterVolume().cubicMetres(),
                    density(bottle.reading()),
                    density(plan.stop().reading()),
                    BankLevels.NO_BOOSTER);
            assertThat(done).isEqualTo(plan.reaches());
            reached += done ? 1 : 0;
            if (done) {
                List<RankedSupply> after = plan.fill().bankAfter();
                for (int place = 0; place < size; place++) {
                    double expected = after.get(place).contents().moles();
                    assertThat(levels.density_molPerM3(place) * levels.volume_m3(place))
                            .isEqualTo(expected, within(1e-9 * expected + 1e-12));
                }
                assertThat(levels.vented_mol()).isEqualTo(plan.fill().vented().moles(), within(1e-9));
            } else {
                assertThat(levels.end_molPerM3())
                        .isEqualTo(density(plan.fill().finalReading()), within(1e-6 * levels.end_molPerM3()));
            }
        }
        assertThat(reached).isBetween(100, 400);
    }

    private static FillPlan plan(FillPlanner planner, List<SupplyState> supplies, BottleToFill bottle) {
        PlanOutcome outcome = planner.plan(new FillRequest(supplies, bottle));
        assertThat(outcome).isInstanceOf(FillPlan.class);
        return (FillPlan) outcome;
    }

    private static BankLevels levels(List<SupplyState> supplies, double hoseLitres) {
        BankLevels levels = new BankLevels(supplies.size(), hoseLitres / 1000, density(GaugePressure.ZERO));
        for (int place = 0; place < supplies.size(); place++) {
            SupplyState supply = supplies.get(place);
            levels.put(place, supply.waterVolume().cubicMetres(), density(supply.reading()));
        }
        levels.rank();
        return levels;
    }

    private static double density(GaugePressure reading) {
        return LINE.density_molPerM3(
                reading.toAbsolute(StandardAtmosphere.PRESSURE).pascals());
    }
}
