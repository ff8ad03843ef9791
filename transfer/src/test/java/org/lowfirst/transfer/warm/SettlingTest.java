package org.lowfirst.transfer.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

class SettlingTest {

    private final WarmModel model = WarmModel.oxygen();

    private static WarmState hot(WallMaterial material, double psi, double gas_K, double wall_K) {
        Volume water = Volume.ofLitres(2.9);
        return WarmState.at(
                        new WarmVessel(water, Walls.assumed(material, water, GaugePressure.ofPsi(2015))),
                        GaugePressure.ofPsi(psi),
                        new Temperature(gas_K),
                        new Temperature(wall_K),
                        Workbench.AT_70F,
                        Workbench.OXYGEN)
                .orElseThrow();
    }

    private Settling rest(WarmState state, double within) {
        return model.rest(new Rest(state, Workbench.AT_70F, within, new Sampling(60, 172_800)))
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(WallMaterial.class)
    void aHotBottleFallsToItsSettledReading(WallMaterial material) {
        WarmState state = hot(material, 2015, 320, 310);
        Settling settling = rest(state, 0.01);
        assertThat(settling.settled().toPsi()).isCloseTo(Workbench.settledPsi(state), within(1e-6));
        for (int i = 1; i < settling.series().size(); i++) {
            assertThat(settling.series().get(i).reading())
                    .isLessThanOrEqualTo(settling.series().get(i - 1).reading());
        }
        assertThat(settling.end().contents()).isEqualTo(state.contents());
        assertThat(settling.heatToAir_J()).isPositive();
    }

    @Test
    void whenTheWaitIsOverTheGaugeIsTheShareFromItsSettledReading() {
        WarmState state = hot(WallMaterial.ALUMINIUM, 2015, 320, 310);
        Settling settling = rest(state, 0.01);
        double wait_s = settling.wait_s().orElseThrow();
        WarmState then = model.rest(Rest.lasting(state, Workbench.AT_70F, wait_s, 1e9))
                .orElseThrow()
                .end();
        double reading =
                then.gauge(Workbench.AT_70F, Workbench.OXYGEN).orElseThrow().pascals();
        assertThat(reading / settling.settled().pascals() - 1.0).isCloseTo(0.01, within(1e-7));
    }

    @Test
    void aColdSupplyRisesToItsSettledReading() {
        Settling settling = rest(hot(WallMaterial.STEEL, 1500, 280, 290), 0.01);
        assertThat(settling.series().get(0).reading()).isLessThan(settling.settled());
        assertThat(settling.heatToAir_J()).isNegative();
    }

    @Test
    void aSettledBottleNeedsNoWait() {
        Settling settling = rest(hot(WallMaterial.STEEL, 1500, 294.26, 294.26), 0.01);
        assertThat(settling.wait_s()).hasValue(0.0);
    }

    @Test
    void closerToSettledTakesLonger() {
        WarmState state = hot(WallMaterial.STEEL, 2015, 320, 310);
        double before = 0;
        for (double share : new double[] {0.05, 0.02, 0.01, 0.005, 0.001}) {
            double wait = rest(state, share).wait_s().orElseThrow();
            assertThat(wait).isGreaterThan(before);
            before = wait;
        }
    }

    @Test
    void aWaitLongerThanAllowedIsLeftOpen() {
        Answer<Settling> answer = model.rest(
                new Rest(hot(WallMaterial.STEEL, 2015, 320, 310), Workbench.AT_70F, 0.01, new Sampling(60, 120)));
        assertThat(answer.orElseThrow().wait_s()).isEmpty();
    }

    /** A wall alone that radiates nothing to speak of: exponential between 2 and 1 K at a coefficient that hardly changes. */
    @Test
    void theLastDegreesGoAsNewtonsLawOfCoolingSays() {
        WarmState state = hot(WallMaterial.ALUMINIUM, 50, 296.26, 296.26);
        Wall wall = state.vessel().wall();
        Settling hour =
                model.rest(Rest.lasting(state, Workbench.AT_70F, 1200, 1e9)).orElseThrow();
        double end_K = hour.end().wall().get(0).kelvin() - 294.26;
        double middle_K = 294.26 + Math.sqrt(2.0 * end_K);
        double h = model.heat().outside().coefficient_WPerM2K(middle_K, 294.26, wall.height_m(), wall.emissivity());
        double capacity = wall.capacity_JPerK(295) + state.contents().moles() * 21.0;
        double expected_K = 2.0 * Math.exp(-h * wall.outerArea_m2() * 1200 / capacity);
        assertThat(end_K).isCloseTo(expected_K, within(0.01));
    }
}
