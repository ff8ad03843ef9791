package org.lowfirst.transfer.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Limits with a closed form: energy and mass balances solved outside this project with the Schmidt and Wagner equation by an open
 * general-purpose library and a second program (agreement 4e-15). Tolerance: half a unit of the last digit given, and what 1e-6 K
 * of the integration makes of it.
 */
class WarmLimitsReferenceTest {

    private static final double DIGIT_K = 0.00055;
    private static final double DIGIT_PSI = 0.0055;

    private final WarmModel model = WarmModel.oxygen();
    private final WarmModel keepsHeat = model.with(model.heat().timesOutside(0.0));

    /** m2 u2 - m1 u1 = (m2 - m1) h of the source. */
    @ParameterizedTest
    @CsvSource({"200, 375.608, 1485.94", "0, 383.011, 1453.34", "500, 363.295, 1544.16", "1000, 340.618, 1667.12"})
    void withoutAWallTheGasReachesTheAdiabaticTemperature(double from, double hot_K, double settled) {
        WarmState bottle = Workbench.bottle(2.9, from, Workbench.wall(2.9, 2.3, 896), Contact.NONE);
        for (double psiPerMinute : new double[] {50, 200, 2000}) {
            WarmFill fill = model.fill(
                            Workbench.stage(Workbench.constant(2200), bottle, Workbench.rising(psiPerMinute), 2015))
                    .orElseThrow();
            assertThat(fill.ending()).isEqualTo(WarmEnding.STOP);
            assertThat(fill.bottle().gas().kelvin()).isCloseTo(hot_K, within(DIGIT_K));
            assertThat(Workbench.settledPsi(fill.bottle())).isCloseTo(settled, within(DIGIT_PSI));
            assertThat(fill.peakBottleGas().kelvin()).isCloseTo(hot_K, within(DIGIT_K));
        }
    }

    @Test
    void aSupplyWithoutHeatFromItsWallCoolsAsItEmpties() {
        WarmState bottle = Workbench.bottle(2.9, 200, Workbench.wall(2.9, 2.3, 896), Contact.NONE);
        WarmState supply = Workbench.bottle(49.0, 2200, Workbench.wall(49, 55, 470), Contact.NONE);
        WarmFill fill = model.fill(Workbench.stage(
                        new WarmSource.FromSupply(supply), bottle, new Opening.Fixed(Workbench.WIDE), 2015))
                .orElseThrow();
        WarmState left = ((WarmSource.FromSupply) fill.source()).state();
        assertThat(fill.bottle().gas().kelvin()).isCloseTo(373.245, within(DIGIT_K));
        assertThat(left.gas().kelvin()).isCloseTo(289.149, within(DIGIT_K));
        assertThat(left.gauge(Workbench.AT_70F, Workbench.OXYGEN).orElseThrow().toPsi())
                .isCloseTo(2072.02, within(DIGIT_PSI));
        assertThat(Workbench.settledPsi(fill.bottle())).isCloseTo(1496.71, within(DIGIT_PSI));
        assertThat(Workbench.settledPsi(left)).isCloseTo(2124.23, within(DIGIT_PSI));
        assertThat(fill.lowestSupplyGas().kelvin()).isCloseTo(289.149, within(DIGIT_K));
    }

    @Test
    void inPerfectContactGasAndAluminiumWallWarmTogether() {
        WarmState bottle = Workbench.bottle(2.9, 200, Workbench.wall(2.9, 2.3, 896), Contact.PERFECT);
        WarmFill fill = keepsHeat
                .fill(Workbench.stage(Workbench.constant(2200), bottle, Workbench.rising(200), 2015))
                .orElseThrow();
        assertThat(fill.bottle().gas().kelvin()).isCloseTo(308.010, within(DIGIT_K));
        assertThat(fill.bottle().wall().get(0).kelvin()).isCloseTo(308.010, within(DIGIT_K));
        assertThat(Workbench.settledPsi(fill.bottle())).isCloseTo(1893.74, within(DIGIT_PSI));
    }

    @Test
    void convectionManyTimesStrongerComesToPerfectContact() {
        double before = Double.POSITIVE_INFINITY;
        for (double factor : new double[] {1, 10, 100, 1000}) {
            WarmState bottle = Workbench.bottle(2.9, 200, Workbench.wall(2.9, 2.3, 896), Contact.CONVECTION);
            WarmModel strong = keepsHeat.with(keepsHeat.heat().timesInside(factor));
            WarmFill fill = strong.fill(Workbench.stage(Workbench.constant(2200), bottle, Workbench.rising(200), 2015))
                    .orElseThrow();
            double off = Math.abs(fill.bottle().gas().kelvin() - 308.010);
            assertThat(off).isLessThan(before);
            before = off;
        }
        assertThat(before).isLessThan(0.02);
    }
}
