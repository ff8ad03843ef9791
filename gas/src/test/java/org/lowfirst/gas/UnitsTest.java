package org.lowfirst.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Conversions against the exact definitions (NIST SP 811 prints the same digits; from memory). */
class UnitsTest {

    @Test
    void unitsFollowTheirDefinitions() {
        assertThat(GaugePressure.ofPsi(1.0).pascals()).isCloseTo(6894.757293168, within(1e-9));
        assertThat(GaugePressure.ofBar(1.0).pascals()).isEqualTo(1e5);
        assertThat(GaugePressure.of(1.0, PressureUnit.MEGAPASCAL).toBar()).isCloseTo(10.0, within(1e-14));
        assertThat(Volume.of(1.0, VolumeUnit.CUBIC_FOOT).toLitres()).isCloseTo(28.316846592, within(1e-12));
        assertThat(Volume.of(1.0, VolumeUnit.CUBIC_INCH).toLitres()).isCloseTo(0.016387064, within(1e-15));
        assertThat(Mass.ofPounds(1.0).kilograms()).isEqualTo(0.45359237);
        assertThat(Temperature.ofFahrenheit(70).kelvin()).isCloseTo(294.261111111111, within(1e-12));
        assertThat(Temperature.ofFahrenheit(-40).toCelsius()).isCloseTo(-40.0, within(1e-12));
        assertThat(StandardAtmosphere.PRESSURE.to(PressureUnit.PSI)).isCloseTo(14.6959488, within(5e-8));
    }

    @Test
    void everyUnitGoesThereAndBack() {
        for (PressureUnit unit : PressureUnit.values()) {
            assertThat(unit.fromPascals(unit.toPascals(123.4))).isCloseTo(123.4, within(1e-12));
        }
        for (VolumeUnit unit : VolumeUnit.values()) {
            assertThat(unit.fromCubicMetres(unit.toCubicMetres(123.4))).isCloseTo(123.4, within(1e-12));
        }
        for (TemperatureUnit unit : TemperatureUnit.values()) {
            assertThat(unit.fromKelvin(unit.toKelvin(123.4))).isCloseTo(123.4, within(1e-12));
        }
    }

    @Test
    void gaugeAndAbsoluteCrossOnlyWithTheSurroundings() {
        AbsolutePressure mountain = AbsolutePressure.ofBar(0.8);
        GaugePressure reading = GaugePressure.ofBar(150);
        assertThat(reading.toAbsolute(mountain).toBar()).isCloseTo(150.8, within(1e-12));
        assertThat(reading.toAbsolute(mountain).toGauge(mountain).toBar()).isCloseTo(150.0, within(1e-12));
        assertThat(reading.toGauge(mountain)).isEqualTo(reading);
        assertThat(mountain.toAbsolute(StandardAtmosphere.PRESSURE)).isEqualTo(mountain);
        assertThat(mountain.toGauge(StandardAtmosphere.PRESSURE).toBar()).isCloseTo(-0.21325, within(1e-12));
    }

    @Test
    void impossibleQuantitiesAreRefused() {
        double nan = Double.NaN;
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AbsolutePressure(-1))
                .withMessageContaining("-1.0 Pa");
        assertThatIllegalArgumentException().isThrownBy(() -> new AbsolutePressure(nan));
        assertThatIllegalArgumentException().isThrownBy(() -> new GaugePressure(nan));
        assertThatIllegalArgumentException().isThrownBy(() -> new Temperature(0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Temperature(nan));
        assertThatIllegalArgumentException().isThrownBy(() -> new Volume(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Amount(nan));
        assertThatIllegalArgumentException().isThrownBy(() -> new Density(Double.POSITIVE_INFINITY));
        assertThatIllegalArgumentException().isThrownBy(() -> new Mass(nan));
        assertThatIllegalArgumentException().isThrownBy(() -> new IdealGas("oxygen", 0.0));
        assertThatIllegalArgumentException().isThrownBy(() -> new IdealGas("oxygen", 0.032, nan));
    }
}
