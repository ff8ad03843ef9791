package org.lowfirst.transfer.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Amount;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.transfer.Hose;
import org.lowfirst.transfer.Stage;
import org.lowfirst.transfer.StageResult;
import org.lowfirst.transfer.Vessel;

/**
 * Infinitely slow is isothermal: worked cases computed outside this project with the Schmidt and Wagner equation, everything at one
 * temperature. Slow here: gas and a wall of a thousand tonnes always at one temperature.
 */
class SlowFillReferenceTest {

    private static final double EQUAL_PSI = 0.0055;

    private final WarmModel model = WarmModel.oxygen();

    private static Wall endless(double litres) {
        return Workbench.wall(litres, 1e6, 900);
    }

    private static WarmState isothermal(double litres, double psi) {
        return Workbench.bottle(litres, psi, endless(litres), Contact.PERFECT);
    }

    @Test
    void fortyNineLitresAndTwoPointNineComeToOnePressure() {
        WarmFill fill = model.fill(Workbench.stage(
                        new WarmSource.FromSupply(isothermal(49.0, 1800)),
                        isothermal(2.9, 300),
                        new Opening.Fixed(Workbench.WIDE),
                        3000))
                .orElseThrow();
        assertThat(fill.ending()).isEqualTo(WarmEnding.EQUAL);
        assertThat(Workbench.settledPsi(fill.bottle())).isCloseTo(1717.61, within(EQUAL_PSI));
        assertThat(fill.balance().moved().moles()).isCloseTo(12.4155, within(6e-5));

        WarmFill next = model.fill(Workbench.stage(
                        new WarmSource.FromSupply(isothermal(49.0, 2200)),
                        fill.bottle(),
                        new Opening.Fixed(Workbench.WIDE),
                        2015))
                .orElseThrow();
        WarmState left = ((WarmSource.FromSupply) next.source()).state();
        assertThat(next.ending()).isEqualTo(WarmEnding.STOP);
        assertThat(Workbench.settledPsi(left)).isCloseTo(2182.20, within(0.0055));
        assertThat(next.balance().moved().moles()).isCloseTo(2.64648, within(6e-5));
    }

    /** Bar absolute at 20 C. */
    @ParameterizedTest
    @CsvSource({
        "50, 150, 5, 10, 137.420",
        "50, 150, 50, 1.01325, 77.016",
        "10, 200, 10, 50, 124.341",
        "50, 200, 2, 1.01325, 192.073",
        "20, 100, 10, 10, 70.707"
    })
    void isothermalPairsComeToTheTabledPressure(double v1, double p1, double v2, double p2, double equal) {
        Surroundings at20C = Surroundings.at(Temperature.ofCelsius(20));
        WarmFill fill = model.fill(new WarmStage(
                        new WarmSource.FromSupply(state(v1, p1, at20C)),
                        state(v2, p2, at20C),
                        new Opening.Fixed(Workbench.WIDE),
                        Stop.at(GaugePressure.ofBar(300)),
                        at20C,
                        new Sampling(60, 86_400)))
                .orElseThrow();
        double bar = fill.bottle()
                .gaugeAt(at20C.temperature(), at20C, Workbench.OXYGEN)
                .orElseThrow()
                .toAbsolute(StandardAtmosphere.PRESSURE)
                .toBar();
        assertThat(bar).isCloseTo(equal, within(0.00055));
    }

    private static WarmState state(double litres, double barAbsolute, Surroundings surroundings) {
        return WarmState.settled(
                        new WarmVessel(Volume.ofLitres(litres), endless(litres), Contact.PERFECT),
                        AbsolutePressure.ofBar(barAbsolute).toGauge(StandardAtmosphere.PRESSURE),
                        surroundings,
                        Workbench.OXYGEN)
                .orElseThrow();
    }

    /** With the published heat transfer, the slower the rise the nearer the settled end to the isothermal stage. */
    @Test
    void withConvectionTheEndComesToTheIsothermalStageAsTheRiseGetsSlower() {
        Isotherm line =
                Workbench.OXYGEN.isotherm(Workbench.AT_70F.temperature()).orElseThrow();
        AbsolutePressure ambient = StandardAtmosphere.PRESSURE;
        Vessel supply = Vessel.at(Volume.ofLitres(49), GaugePressure.ofPsi(2200).toAbsolute(ambient), line);
        Vessel bottle = Vessel.at(Volume.ofLitres(2.9), GaugePressure.ofPsi(200).toAbsolute(ambient), line);
        StageResult isothermal = Stage.join(supply, Hose.NONE, bottle);
        double before = Double.POSITIVE_INFINITY;
        for (double psiPerMinute : new double[] {200, 20, 2, 0.2}) {
            WarmFill fill = model.fill(Workbench.stage(
                            new WarmSource.FromSupply(
                                    Workbench.bottle(49, 2200, Workbench.wall(49, 60, 470), Contact.CONVECTION)),
                            Workbench.bottle(2.9, 200, Workbench.wall(2.9, 2.3, 896), Contact.CONVECTION),
                            Workbench.rising(psiPerMinute),
                            3000))
                    .orElseThrow();
            Amount moved = fill.balance().moved();
            double off = Math.abs(moved.moles() / isothermal.moved().moles() - 1.0);
            assertThat(off).isLessThan(before);
            before = off;
        }
        assertThat(before).isLessThan(2e-3);
    }
}
