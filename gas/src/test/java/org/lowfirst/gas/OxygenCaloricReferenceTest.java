package org.lowfirst.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Against states-oxygen-SchmidtWagner1985.csv: computed with CoolProp 8.0.1dev, same published equation and same zeros of energy and entropy,
 * independent code. The file prints 10 digits.
 */
class OxygenCaloricReferenceTest {

    private static final Offset<Double> RELATIVE = within(1e-8);
    private final CaloricEquation oxygen = Oxygen.schmidtWagner();

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/states-oxygen-SchmidtWagner1985.csv", useHeadersInDisplayName = true)
    void everyCaloricPropertyAgrees(
            double T_K,
            double p_Pa,
            double rho,
            double z,
            double u,
            double h,
            double s,
            double cv,
            double cp,
            double w) {
        GasState state =
                oxygen.state(new AbsolutePressure(p_Pa), new Temperature(T_K)).orElseThrow();
        assertThat(state.compressibility() / z).isCloseTo(1.0, RELATIVE);
        assertThat(state.internalEnergy_JPerKg() / u).isCloseTo(1.0, RELATIVE);
        assertThat(state.enthalpy_JPerKg() / h).isCloseTo(1.0, RELATIVE);
        assertThat(state.entropy_JPerKgK() / s).isCloseTo(1.0, RELATIVE);
        assertThat(state.cv_JPerKgK() / cv).isCloseTo(1.0, RELATIVE);
        assertThat(state.cp_JPerKgK() / cp).isCloseTo(1.0, RELATIVE);
        assertThat(state.soundSpeed_mPerS() / w).isCloseTo(1.0, RELATIVE);
    }
}
