package org.lowfirst.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Against states-oxygen-SchmidtWagner1985.csv: computed with CoolProp 8.0.1dev, same published equations, independent code. */
class OxygenTransportReferenceTest {

    private final Transport oxygen = Oxygen.lemmonJacobsen();

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/states-oxygen-SchmidtWagner1985.csv", useHeadersInDisplayName = true)
    void viscosityAndConductivityAgree(
            double T_K,
            double p_Pa,
            double rho,
            double z,
            double u,
            double h,
            double s,
            double cv,
            double cp,
            double w,
            double viscosity,
            double conductivity) {
        Transport.Values values =
                oxygen.values(new AbsolutePressure(p_Pa), new Temperature(T_K)).orElseThrow();
        assertThat(values.viscosity_PaS() / viscosity).isCloseTo(1.0, within(1e-4));
        assertThat(values.conductivity_WPerMK() / conductivity).isCloseTo(1.0, within(1e-4));
    }
}
