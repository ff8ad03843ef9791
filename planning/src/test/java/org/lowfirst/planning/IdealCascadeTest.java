package org.lowfirst.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.gas.PressureUnit.BAR;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.Temperature;

/** Ideal gas in closed form. */
final class IdealCascadeTest {

    private final FillPlanner planner = FillPlanner.under(
            Conditions.of(new IdealGas("oxygen", 0.0319988), Temperature.ofCelsius(20), ReferenceRule.EU));

    /** n equal supplies of volume V at absolute p above an evacuated bottle v: p_n = p (1 - (v / (V + v))^n). */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 6})
    void equalSuppliesCloseTheGapByOneFactorEach(int n) {
        double ambient = 1.01325;
        double[] readings = new double[n];
        java.util.Arrays.fill(readings, 150 - ambient);
        FillPlan plan =
                Planned.plan(planner, Planned.bank(50, BAR, readings), Planned.bottle("R1", 10, 0, 200, 200, BAR));
        double gap = (150 - ambient) * Math.pow(10 / 60.0, n);
        assertThat(plan.fill().finalReading().toBar()).isEqualTo(150 - ambient - gap, within(1e-9));
    }

    /** One supply: complete fills are the whole part of V (p - stop) / (v (stop - start)). */
    @ParameterizedTest
    @ValueSource(doubles = {150.5, 160, 171.2, 190, 205, 230})
    void oneSupplyGivesTheWholePartOfItsHeadOverTheBottlesNeed(double reading) {
        FillPlan plan =
                Planned.plan(planner, Planned.bank(50, BAR, reading), Planned.bottle("R1", 5, 40, 150, 200, BAR));
        assertThat(plan.fillsLeft().complete()).isEqualTo((int) (50 * (reading - 150) / (5 * (150 - 40))));
    }
}
