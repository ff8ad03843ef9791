package org.lowfirst.planning;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.gas.PressureUnit.PSI;
import static org.lowfirst.planning.Planned.bank;
import static org.lowfirst.planning.Planned.bottle;
import static org.lowfirst.planning.Planned.bottleReadings;
import static org.lowfirst.planning.Planned.order;
import static org.lowfirst.planning.Planned.plan;
import static org.lowfirst.planning.Planned.readings;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.IdealGas;
import org.lowfirst.gas.Temperature;
import org.lowfirst.transfer.Ending;

/**
 * Fills at 294.26 K worked outside this project with the oxygen equation of Schmidt and Wagner (1985) in an open
 * general-purpose property library (CoolProp 8.0.0) and a second independent program. Tolerance: half a unit of the last digit
 * given.
 */
final class WorkedFillsReferenceTest {

    private static final Offset<Double> TENTH = within(0.05);
    private static final Offset<Double> HUNDREDTH = within(0.005);
    private static final Temperature T = new Temperature(294.26);
    // 294.26 K is a thousandth of a kelvin below 70 F, so the bench's own temperature is the reference here
    private final FillPlanner planner = FillPlanner.under(new Conditions(
            org.lowfirst.gas.Oxygen.schmidtWagner(),
            T,
            T,
            org.lowfirst.gas.StandardAtmosphere.PRESSURE,
            new org.lowfirst.gas.Volume(0)));

    @Test
    void aBankOfThreeBringsTheBottleToItsTarget() {
        FillPlan plan = plan(planner, bank(46.5, PSI, 600, 1200, 2200), bottle("R1", 9.0, 100, 1850, 1850, PSI));
        assertThat(order(plan)).containsExactly("A", "B", "C");
        assertThat(bottleReadings(plan, PSI)).containsExactly(new double[] {520.2, 1091.3, 1850}, TENTH);
        assertThat(readings(plan.fill().bankAfter(), PSI)).containsExactly(new double[] {520.2, 1091.3, 2051.8}, TENTH);
        assertThat(plan.reaches()).isTrue();
        assertThat(plan.shortBy()).isNull();
    }

    @Test
    void anIdealGasWouldGiveOtherReadings() {
        FillPlanner ideal = FillPlanner.under(Conditions.of(new IdealGas("oxygen", 0.0319988), T, ReferenceRule.EU));
        FillPlan plan = plan(ideal, bank(46.5, PSI, 600, 1200, 2200), bottle("R1", 9.0, 100, 1850, 1850, PSI));
        assertThat(bottleReadings(plan, PSI)).containsExactly(new double[] {518.9, 1089.6, 1850}, TENTH);
        assertThat(readings(plan.fill().bankAfter(), PSI)[2]).isEqualTo(2052.8, TENTH);
    }

    @Test
    void aBankThatCannotReachSaysWhereItStops() {
        FillPlan plan = plan(planner, bank(46.5, PSI, 400, 900, 1600), bottle("R1", 4.6, 0, 2015, 2015, PSI));
        assertThat(bottleReadings(plan, PSI)).containsExactly(new double[] {364.5, 852.5, 1533.2}, TENTH);
        assertThat(plan.reaches()).isFalse();
        assertThat(requireNonNull(plan.shortBy()).toPsi()).isEqualTo(2015 - 1533.2, TENTH);
        assertThat(plan.fillsLeft().complete()).isZero();
    }

    @Test
    void aSupplyAtEighteenHundredIsEqualisedAndTheNextOneFinishes() {
        FillPlan plan = plan(planner, bank(49.0, PSI, 1800, 2200), bottle("R1", 2.9, 300, 2015, 2015, PSI));
        assertThat(bottleReadings(plan, PSI)).containsExactly(new double[] {1717.61, 2015}, HUNDREDTH);
        assertThat(readings(plan.fill().bankAfter(), PSI)).containsExactly(new double[] {1717.61, 2182.20}, HUNDREDTH);
        assertThat(plan.fill().steps()).extracting(Step::ends).containsExactly(Ending.EQUAL, Ending.TARGET);
        assertThat(plan.fill().steps().get(0).moved().moles()).isEqualTo(12.4155, within(0.00005));
        assertThat(plan.fill().steps().get(1).moved().moles()).isEqualTo(2.64648, within(0.000005));
    }

    @Test
    void oneFreshSupplyAloneGivesOneCompleteFill() {
        FillPlan plan = plan(planner, bank(49.0, PSI, 2200), bottle("R1", 2.9, 200, 2015, 2015, PSI));
        assertThat(readings(plan.fill().bankAfter(), PSI)[0]).isEqualTo(2093.28, HUNDREDTH);
        assertThat(plan.fillsLeft().complete()).isEqualTo(1);
        assertThat(requireNonNull(plan.fillsLeft().nextStopsAt()).toPsi()).isEqualTo(1988.59, HUNDREDTH);
        assertThat(plan.fillsLeft().inWords(ShownUnits.US)).isEqualTo("1, and a 2nd to about 1,989 psi");
    }
}
