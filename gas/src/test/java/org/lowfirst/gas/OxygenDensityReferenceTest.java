package org.lowfirst.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Against states-oxygen-SchmidtWagner1985.csv: computed with CoolProp 8.0.1dev, same published equation, independent code. */
class OxygenDensityReferenceTest {

    private static final double KG_PER_MOL = 0.0319988;
    private final EquationOfState oxygen = Oxygen.schmidtWagner();

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/states-oxygen-SchmidtWagner1985.csv", useHeadersInDisplayName = true)
    void densityAndPressureAgree(double T_K, double p_Pa, double rho_kgPerM3) {
        Temperature temperature = new Temperature(T_K);
        Density found = oxygen.density(new AbsolutePressure(p_Pa), temperature).orElseThrow();
        assertThat(found.molesPerCubicMetre() * KG_PER_MOL / rho_kgPerM3).isCloseTo(1.0, within(1e-8));
        assertThat(oxygen.pressure(found, temperature).orElseThrow().pascals() / p_Pa)
                .isCloseTo(1.0, within(1e-13));
    }
}
