package org.lowfirst.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.gas.PressureUnit.PSI;
import static org.lowfirst.planning.Planned.bank;
import static org.lowfirst.planning.Planned.bottle;
import static org.lowfirst.planning.Planned.oxygen;
import static org.lowfirst.planning.Planned.plan;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

final class CapTest {

    private final List<SupplyState> bank = bank(49, PSI, 900, 1500, 2300);

    @Test
    void aTargetAtTheServicePressureOnABenchAtTheReferenceTemperatureIsNotCapped() {
        FillPlan plan = at(70, 2015, 2015);
        assertThat(plan.stop().reading()).isEqualTo(GaugePressure.ofPsi(2015));
        assertThat(plan.stop().cap()).isEqualTo(Cap.NONE);
        assertThat(plan.notes(ShownUnits.US)).noneMatch(note -> note.contains("service pressure"));
    }

    @Test
    void aTargetAboveTheServicePressureIsCappedAtIt() {
        FillPlan plan = at(70, 2015, 1800);
        assertThat(plan.stop().reading()).isEqualTo(GaugePressure.ofPsi(1800));
        assertThat(plan.stop().cap()).isEqualTo(Cap.SERVICE_PRESSURE);
        assertThat(plan.reaches()).isTrue();
        assertThat(plan.notes(ShownUnits.US))
                .startsWith("The target of R1 (2,015 psi) is above its service pressure of 1,800 psi;"
                        + " the service pressure counts.");
    }

    @Test
    void aWarmBenchStillStopsAtTheServicePressure() {
        FillPlan plan = at(95, 2100, 2015);
        assertThat(plan.stop().reading()).isEqualTo(GaugePressure.ofPsi(2015));
        assertThat(plan.stop().cap()).isEqualTo(Cap.SERVICE_PRESSURE);
    }

    @Test
    void aColdBenchStopsLowerAndSaysWhy() {
        FillPlan plan = at(50, 2015, 2015);
        assertThat(plan.stop().reading()).isLessThan(GaugePressure.ofPsi(1910));
        assertThat(plan.stop().cap()).isEqualTo(Cap.COLD_BENCH);
        assertThat(plan.reaches()).isTrue();
        assertThat(plan.notes(ShownUnits.US))
                .startsWith("The bench is at 50 F. Warmed up to 70 F, a bottle shut at 1,908 psi reads its service"
                        + " pressure of 2,015 psi: R1 is shut at 1,908 psi.");
    }

    @Test
    void aLowTargetOnAColdBenchIsLeftAlone() {
        FillPlan plan = at(50, 1500, 2015);
        assertThat(plan.stop().cap()).isEqualTo(Cap.NONE);
        assertThat(plan.stop().reading()).isEqualTo(GaugePressure.ofPsi(1500));
    }

    @Test
    void theColderTheBenchTheLowerTheStop() {
        GaugePressure before = GaugePressure.ofPsi(2015);
        for (int fahrenheit = 69; fahrenheit >= -40; fahrenheit--) {
            GaugePressure stop = at(fahrenheit, 2015, 2015).stop().reading();
            assertThat(stop).isLessThan(before);
            before = stop;
        }
    }

    @Test
    void theRuleSetDecidesWhichTemperatureCounts() {
        FillPlanner european = oxygen(Temperature.ofFahrenheit(62), ReferenceRule.EU);
        assertThat(plan(european, bank, bottle("R1", 2.9, 200, 2015, 2015, PSI))
                        .stop()
                        .cap())
                .isEqualTo(Cap.NONE);
        assertThat(at(62, 2015, 2015).stop().cap()).isEqualTo(Cap.COLD_BENCH);
    }

    private FillPlan at(double fahrenheit, double target, double service) {
        FillPlanner planner = oxygen(Temperature.ofFahrenheit(fahrenheit), ReferenceRule.US);
        return plan(planner, bank, bottle("R1", 2.9, 200, target, service, PSI));
    }
}
