package org.lowfirst.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.planning.Planned.bank;
import static org.lowfirst.planning.Planned.bottle;
import static org.lowfirst.planning.Planned.plan;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.Volume;

/** Where a cold bench shuts the valve, against settled pressures at constant contents. */
final class ColdBenchReferenceTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/settled-pressure-oxygen-coolprop.csv", useHeadersInDisplayName = true)
    void theStopIsTheColdReadingOfABottleThatIsFullAtTheReferenceTemperature(
            ReferenceRule rule,
            double service,
            PressureUnit unit,
            double bench,
            TemperatureUnit benchUnit,
            double reading) {
        FillPlanner planner = Planned.oxygen(Temperature.of(bench, benchUnit), rule);
        FillPlan plan = plan(planner, bank(50, PressureUnit.BAR, 50, 300), bottle("R1", 3, 0, service, service, unit));
        double halfDigit = unit == PressureUnit.PSI ? 0.5 : 0.05;
        assertThat(plan.stop().reading().to(unit)).isEqualTo(reading, within(halfDigit * 1.0001));
        assertThat(plan.stop().cap()).isEqualTo(Cap.COLD_BENCH);
        assertThat(plan.stop().neverAbove()).isEqualTo(plan.stop().reading());
    }

    /**
     * A chart in TM 1-1510-262-10 (read): 1,600 psi at 20 C is 1,250 psi at -30 C. Read off a chart with lines 50 psi apart, so
     * half of that is the tolerance.
     */
    @Test
    void anAircraftManualsChartAgreesToTheWidthOfItsLines() {
        FillPlanner planner = FillPlanner.under(new Conditions(
                Oxygen.schmidtWagner(),
                Temperature.ofCelsius(-30),
                Temperature.ofCelsius(20),
                StandardAtmosphere.PRESSURE,
                new Volume(0)));
        FillPlan plan =
                plan(planner, bank(50, PressureUnit.BAR, 50, 200), bottle("R1", 3, 0, 1600, 1600, PressureUnit.PSI));
        assertThat(plan.stop().reading().toPsi()).isEqualTo(1250, within(25.0));
    }
}
