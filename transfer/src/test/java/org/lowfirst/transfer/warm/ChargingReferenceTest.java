package org.lowfirst.transfer.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;

/**
 * Charging from a constant source, energy balances solved outside this project with the Schmidt and Wagner equation (an open
 * general-purpose library); masses and specific heats are those of the balances. Tolerance: half a unit of the printed digit.
 */
class ChargingReferenceTest {

    private final WarmModel model = WarmModel.oxygen();
    private final WarmModel keepsHeat = model.with(model.heat().timesOutside(0.0));

    /** An evacuated bottle, no wall: below the 410 K of the ideal gas, because throttling cools oxygen. Bar absolute, 20 C. */
    @ParameterizedTest
    @CsvSource({"150, 10, 356.4", "150, 150, 384.2", "200, 200, 380.2"})
    void anEvacuatedBottleStaysBelowTheIdealGas(double line, double end, double hot_K) {
        Surroundings at20C = Surroundings.at(Temperature.ofCelsius(20));
        WarmState evacuated = WarmState.settled(
                        new WarmVessel(Volume.ofLitres(5), Workbench.wall(5, 4, 900), Contact.NONE),
                        new AbsolutePressure(10.0).toGauge(StandardAtmosphere.PRESSURE),
                        at20C,
                        Workbench.OXYGEN)
                .orElseThrow();
        WarmFill fill = model.fill(new WarmStage(
                        new WarmSource.Constant(AbsolutePressure.ofBar(line), at20C.temperature()),
                        evacuated,
                        new Opening.Fixed(Workbench.WIDE),
                        Stop.at(AbsolutePressure.ofBar(end).toGauge(StandardAtmosphere.PRESSURE)),
                        at20C,
                        new Sampling(60, 86_400)))
                .orElseThrow();
        assertThat(fill.bottle().gas().kelvin()).isCloseTo(hot_K, within(0.06));
    }

    /** 4.6 L aluminium, 3.6 kg, 900 J/(kg K), from a constant 2 200 psig at 20 C to 2 015 psig: warming in F. */
    @ParameterizedTest
    @CsvSource({"0, 26, 159", "200, 25, 145", "500, 22, 124", "1000, 16, 83", "1500, 9, 41"})
    void anAluminiumBottleWarmsAsComputedOutside(double from, double withWall_F, double without_F) {
        assertThat(warming_F(4.6, 3.6, 900, Contact.PERFECT, from, 2015)).isCloseTo(withWall_F, within(0.55));
        assertThat(warming_F(4.6, 3.6, 900, Contact.NONE, from, 2015)).isCloseTo(without_F, within(0.55));
    }

    /** 10 L steel, 13 kg, 470 J/(kg K), to 1 800 psig. */
    @ParameterizedTest
    @CsvSource({"50, 26", "500, 21", "1200, 11"})
    void aSteelBottleWarmsAsComputedOutside(double from, double withWall_F) {
        assertThat(warming_F(10, 13, 470, Contact.PERFECT, from, 1800)).isCloseTo(withWall_F, within(0.55));
    }

    private double warming_F(double litres, double kg, double c, Contact contact, double fromPsi, double toPsi) {
        Surroundings at20C = Surroundings.at(Temperature.ofCelsius(20));
        WarmState bottle = WarmState.settled(
                        new WarmVessel(Volume.ofLitres(litres), Workbench.wall(litres, kg, c), contact),
                        GaugePressure.ofPsi(fromPsi),
                        at20C,
                        Workbench.OXYGEN)
                .orElseThrow();
        WarmFill fill = keepsHeat
                .fill(new WarmStage(
                        new WarmSource.Constant(
                                GaugePressure.ofPsi(2200).toAbsolute(StandardAtmosphere.PRESSURE), at20C.temperature()),
                        bottle,
                        new Opening.Fixed(Workbench.WIDE),
                        Stop.at(GaugePressure.ofPsi(toPsi)),
                        at20C,
                        new Sampling(60, 86_400)))
                .orElseThrow();
        return (fill.bottle().gas().kelvin() - at20C.temperature().kelvin()) * 1.8;
    }
}
