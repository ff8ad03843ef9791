package org.lowfirst.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** States found by entropy and energy, against figures computed outside this project with the same equation. */
class CompressionReferenceTest {

    private static final double PSI = PressureUnit.PSI.toPascals(1.0);
    private final CaloricEquation oxygen = Oxygen.schmidtWagner();

    /** From 101,325 Pa and 293.15 K; tolerance: half the last printed digit. */
    @ParameterizedTest
    @CsvSource({"500, 756.18, 803.04", "1000, 896.98, 978.92", "2000, 1059.75, 1193.32", "3000, 1166.54, 1339.89"})
    void isentropicCompressionHeatsTheGas(double psia, double real_K, double ideal_K) {
        assertThat(compressed(oxygen, psia)).isCloseTo(real_K, within(0.00501));
        assertThat(compressed(new IdealGas("oxygen", 0.032), psia)).isCloseTo(ideal_K, within(0.00501));
    }

    /** The same by another run of that program, printed to whole degrees Celsius. */
    @ParameterizedTest
    @CsvSource({
        "50, 140",
        "100, 226",
        "200, 326",
        "300, 392",
        "500, 483",
        "1000, 624",
        "2000, 787",
        "2200, 811",
        "3000, 893"
    })
    void isentropicCompressionInCelsius(double psia, double celsius) {
        assertThat(compressed(oxygen, psia) - 273.15).isCloseTo(celsius, within(0.501));
    }

    private static double compressed(CaloricEquation gas, double psia) {
        GasState start =
                gas.state(StandardAtmosphere.PRESSURE, new Temperature(293.15)).orElseThrow();
        return gas.stateWithEntropy(new AbsolutePressure(psia * PSI), start.entropy_JPerKgK())
                .orElseThrow()
                .temperature()
                .kelvin();
    }

    /**
     * Largest mass flux along the isentrope from rest at 294.26 K, the sonic nozzle; half the last printed digit. The table
     * gives 3691.0, 17961, 37261.7 and 40912.2 kg/(m2 s).
     */
    @ParameterizedTest
    @CsvSource({"200, 3691.0, 0.05", "1000, 17961, 0.5", "2015, 37261.7, 0.05", "2200, 40912.2, 0.05"})
    void sonicNozzleFlux(double psig, double flux_kgPerM2S, double halfDigit) {
        StatePoint point = oxygen.newPoint();
        double p0 = psig * PSI + 101_325.0;
        assertThat(point.moveToPressure(p0, 294.26)).isTrue();
        double h0 = point.h_JPerMol();
        double s0 = point.s_JPerMolK();
        double low = 0.2 * p0;
        double high = 0.9 * p0;
        // Golden section: the flux has one maximum between.
        double ratio = 0.5 * (Math.sqrt(5.0) - 1.0);
        for (int i = 0; i < 60; i++) {
            double a = high - ratio * (high - low);
            double b = low + ratio * (high - low);
            if (flux(point, a, h0, s0) > flux(point, b, h0, s0)) {
                high = b;
            } else {
                low = a;
            }
        }
        assertThat(flux(point, 0.5 * (low + high), h0, s0)).isCloseTo(flux_kgPerM2S, within(1.01 * halfDigit));
        double speed = Math.sqrt(2.0 * (h0 - point.h_JPerMol()) / oxygen.molarMass_kgPerMol());
        assertThat(speed / point.soundSpeed_mPerS())
                .as("Mach number in the throat")
                .isCloseTo(1.0, within(1e-6));
    }

    private double flux(StatePoint point, double p_Pa, double h0, double s0) {
        assertThat(point.moveToPressureEntropy(p_Pa, s0, 270.0)).isTrue();
        double mass = oxygen.molarMass_kgPerMol();
        return point.rho_molPerM3() * mass * Math.sqrt(2.0 * (h0 - point.h_JPerMol()) / mass);
    }

    /** An evacuated vessel without a wall filled from a constant 20 C line: u of the end is h of the line. */
    @ParameterizedTest
    @CsvSource({"150, 10, 356.4", "150, 150, 384.2", "200, 200, 380.2"})
    void fillingAnEvacuatedVessel(double line_bar, double final_bar, double kelvin) {
        double h = oxygen.state(AbsolutePressure.ofBar(line_bar), new Temperature(293.15))
                .orElseThrow()
                .enthalpy_JPerKg();
        Density density = oxygen.density(AbsolutePressure.ofBar(final_bar), new Temperature(kelvin))
                .orElseThrow();
        GasState end = oxygen.stateWithEnergy(density, h).orElseThrow();
        assertThat(end.temperature().kelvin()).isCloseTo(kelvin, within(0.06));
    }

    /** Textbook result for the ideal gas: the filled vessel is cp / cv times as hot as the line. */
    @Test
    void fillingAnEvacuatedVesselWithIdealGas() {
        IdealGas gas = new IdealGas("oxygen", 0.032);
        double h = gas.state(AbsolutePressure.ofBar(150), new Temperature(293.15))
                .orElseThrow()
                .enthalpy_JPerKg();
        GasState end = gas.stateWithEnergy(new Density(3000.0), h).orElseThrow();
        assertThat(end.temperature().kelvin()).isCloseTo(1.4 * 293.15, within(1e-9));
    }

    /** Throttling from 150 bar cools oxygen: the state behind the valve has the enthalpy before it. */
    @Test
    void throttlingKeepsEnthalpyAndCools() {
        GasState before = oxygen.state(AbsolutePressure.ofBar(150), new Temperature(293.15))
                .orElseThrow();
        GasState behind = oxygen.stateWithEnthalpy(AbsolutePressure.ofBar(1.01325), before.enthalpy_JPerKg())
                .orElseThrow();
        assertThat(behind.enthalpy_JPerKg()).isCloseTo(before.enthalpy_JPerKg(), within(1e-6));
        assertThat(behind.temperature().kelvin())
                .isLessThan(before.temperature().kelvin() - 20.0);
    }
}
