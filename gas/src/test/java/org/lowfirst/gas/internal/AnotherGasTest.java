package org.lowfirst.gas.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.URL;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Density;
import org.lowfirst.gas.GasState;
import org.lowfirst.gas.Isotherm;
import org.lowfirst.gas.Temperature;

/** Another gas is another file: an invented one whose properties can be written down in closed form. */
class AnotherGasTest {

    private static final double R = 8.314462618;
    private static final double KG_PER_MOL = 0.030;

    private final HelmholtzEquation gas = HelmholtzEquation.read(file());

    static URL file() {
        return Objects.requireNonNull(AnotherGasTest.class.getResource("virial.helmholtz.txt"));
    }

    @ParameterizedTest
    @CsvSource({"200, 10", "200, 2500", "300, 1", "300, 1000", "300, 5000", "900, 2000"})
    void propertiesFollowFromTheTermsOfTheFile(double T_K, double rho) {
        double delta = rho / 10_000;
        double tau = 150 / T_K;
        double damped = 0.05 * delta * tau * tau * Math.exp(-delta);
        double phi = -0.9 * Math.pow(tau, 1.25) + 0.6 * delta * Math.pow(tau, 0.3) + (1 - delta) * damped / delta;
        double byTau =
                -0.9 * 1.25 * delta * Math.pow(tau, 1.25) + 0.3 * 0.3 * delta * delta * Math.pow(tau, 0.3) + 2 * damped;
        double residual = -0.9 * delta * Math.pow(tau, 1.25) + 0.3 * delta * delta * Math.pow(tau, 0.3) + damped;
        double x = 12.5 * tau;
        double idealByTau = 2.5 + x / Math.expm1(x);
        double ideal = Math.log(delta) + 2.5 * Math.log(tau) + Math.log(1 - Math.exp(-x));
        double idealCv = 2.5 + x * x * Math.exp(x) / Math.pow(Math.expm1(x), 2);
        double residualCv = 0.9 * 1.25 * 0.25 * delta * Math.pow(tau, 1.25)
                + 0.3 * 0.3 * 0.7 * delta * delta * Math.pow(tau, 0.3)
                - 2 * damped;

        GasState state = gas.state(new Density(rho), new Temperature(T_K)).orElseThrow();
        assertThat(state.pressure().pascals() / (rho * R * T_K * (1 + delta * phi)))
                .isCloseTo(1.0, within(1e-12));
        double u = R * T_K * (idealByTau + byTau);
        assertThat(state.internalEnergy_JPerKg() * KG_PER_MOL / u).isCloseTo(1.0, within(1e-12));
        double s = R * (idealByTau + byTau - ideal - residual);
        assertThat(state.entropy_JPerKgK() * KG_PER_MOL / s).isCloseTo(1.0, within(1e-12));
        assertThat(state.cv_JPerKgK() * KG_PER_MOL / (R * (idealCv + residualCv)))
                .isCloseTo(1.0, within(1e-12));
    }

    @Test
    void itsIsothermsAreTabulatedToo() {
        Temperature temperature = new Temperature(300);
        Isotherm table = gas.isotherm(temperature).orElseThrow();
        for (double p_Pa = 0.0; p_Pa <= 20e6; p_Pa += 0.25e6) {
            double direct = gas.density(new AbsolutePressure(p_Pa), temperature)
                    .orElseThrow()
                    .molesPerCubicMetre();
            assertThat(table.density_molPerM3(p_Pa)).isCloseTo(direct, within(1e-11 * direct + 1e-12));
        }
    }

    @Test
    void itSaysWhereItIsFromAndHasNoTransportEquations() {
        assertThat(gas.gas()).isEqualTo("virial");
        assertThat(gas.provenance().equationSources()).containsExactly("invented");
        assertThat(gas.findTransport()).isEmpty();
    }
}
