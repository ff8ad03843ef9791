package org.lowfirst.planning.study.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
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
import org.lowfirst.planning.Turn;

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

    /** Several fills in a row, with some supplies used first and an exchange in between. */
    @ParameterizedTest
    @ValueSource(doubles = {0.0, 0.3})
    void suppliesUsedFirstAreOpenedAsThePlanOpensThem(double hoseLitres) {
        Random random = new Random(23);
        FillPlanner planner = FillPlanner.under(
                Conditions.of(Oxygen.schmidtWagner(), T, ReferenceRule.EU).withHose(Volume.ofLitres(hoseLitres)));
        int reached = 0;
        for (int i = 0; i < 200; i++) {
            List<SupplyState> now = new ArrayList<>();
            int size = 2 + random.nextInt(4);
            int first = 1 + random.nextInt(size);
            for (int s = 0; s < size; s++) {
                now.add(new SupplyState(
                        "S" + s,
                        Volume.ofLitres(50),
                        GaugePressure.ofBar(20 + 200 * random.nextDouble()),
                        s < first ? Turn.FIRST : Turn.BY_RANK));
            }
            BankLevels levels = levels(now, hoseLitres, first);
            BottleToFill bottle = new BottleToFill(
                    "R",
                    Volume.ofLitres(8),
                    GaugePressure.ofBar(20),
                    GaugePressure.ofBar(120),
                    GaugePressure.ofBar(300));
            for (int fill = 0; fill < 3; fill++) {
                FillPlan plan = plan(planner, now, bottle);
                boolean done = levels.fill(
                        bottle.waterVolume().cubicMetres(),
                        density(bottle.reading()),
                        density(plan.stop().reading()),
                        BankLevels.NO_BOOSTER);
                assertThat(done).isEqualTo(plan.reaches());
                if (!done) {
                    break;
                }
                reached++;
                now = plan.fill().bankAfter().stream()
                        .map(RankedSupply::toState)
                        .toList();
                List<SupplyState> inOrder = SupplyState.inOrderOfUse(now);
                for (int place = 0; place < size; place++) {
                    double expected = density(inOrder.get(place).reading());
                    assertThat(levels.density_molPerM3(place)).isEqualTo(expected, within(1e-6 * expected));
                }
                assertThat(levels.density_molPerM3(levels.lowest()))
                        .isEqualTo(density(now.get(0).reading()), within(1e-3));
            }
        }
        assertThat(reached).isBetween(100, 550);
    }

    @Test
    void theOneThatComesInTheirPlaceIsUsedByItsRank() {
        List<SupplyState> bank = List.of(
                new SupplyState("A", Volume.ofLitres(50), GaugePressure.ofBar(100), Turn.FIRST),
                new SupplyState("B", Volume.ofLitres(50), GaugePressure.ofBar(60)),
                new SupplyState("C", Volume.ofLitres(50), GaugePressure.ofBar(180)));
        BankLevels levels = levels(bank, 0, 1);
        assertThat(levels.lowest()).isEqualTo(1);
        assertThat(densities(levels)).containsExactly(densities(100, 60, 180));
        levels.exchange(levels.lowest(), density(GaugePressure.ofBar(120)));
        assertThat(densities(levels)).containsExactly(densities(100, 120, 180));
        assertThat(levels.lowest()).isZero();
        levels.exchange(0, density(GaugePressure.ofBar(200)));
        assertThat(densities(levels)).containsExactly(densities(120, 180, 200));
        levels.exchange(0, density(GaugePressure.ofBar(50)));
        assertThat(densities(levels)).containsExactly(densities(50, 180, 200));
    }

    private static double[] densities(BankLevels levels) {
        return IntStream.range(0, levels.size())
                .mapToDouble(levels::density_molPerM3)
                .toArray();
    }

    private static double[] densities(double... bars) {
        return DoubleStream.of(bars)
                .map(bar -> density(GaugePressure.ofBar(bar)))
                .toArray();
    }

    private static FillPlan plan(FillPlanner planner, List<SupplyState> supplies, BottleToFill bottle) {
        PlanOutcome outcome = planner.plan(new FillRequest(supplies, bottle));
        assertThat(outcome).isInstanceOf(FillPlan.class);
        return (FillPlan) outcome;
    }

    private static BankLevels levels(List<SupplyState> supplies, double hoseLitres) {
        return levels(supplies, hoseLitres, 0);
    }

    private static BankLevels levels(List<SupplyState> supplies, double hoseLitres, int usedFirst) {
        BankLevels levels = new BankLevels(supplies.size(), hoseLitres / 1000, density(GaugePressure.ZERO));
        for (int place = 0; place < supplies.size(); place++) {
            SupplyState supply = supplies.get(place);
            levels.put(place, supply.waterVolume().cubicMetres(), density(supply.reading()));
        }
        levels.useFirst(usedFirst);
        levels.rank();
        return levels;
    }

    private static double density(GaugePressure reading) {
        return LINE.density_molPerM3(
                reading.toAbsolute(StandardAtmosphere.PRESSURE).pascals());
    }
}
