package org.lowfirst.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The table of an isotherm against the equation it was made of. */
class PlanningTableConsistencyTest {

    private final EquationOfState oxygen = Oxygen.schmidtWagner();

    @ParameterizedTest
    @ValueSource(doubles = {160.0, 165.0, 180.0, 220.0, 250.0, 273.15, 288.15, 294.26, 310.0, 350.0, 600.0, 2000.0})
    void densityIsThatOfTheEquation(double T_K) {
        Isotherm table = oxygen.isotherm(new Temperature(T_K)).orElseThrow();
        Isotherm direct = oxygen.directIsotherm(new Temperature(T_K)).orElseThrow();
        Random random = new Random(42);
        double worst = 0.0;
        for (int i = 0; i < 20_000; i++) {
            double p_Pa = random.nextDouble() * table.highestPressure_Pa();
            double apart = Math.abs(table.density_molPerM3(p_Pa) / direct.density_molPerM3(p_Pa) - 1.0);
            worst = Math.max(worst, apart);
        }
        assertThat(worst).isLessThan(1e-10);
    }

    @ParameterizedTest
    @ValueSource(doubles = {160.0, 165.0, 180.0, 220.0, 250.0, 273.15, 288.15, 294.26, 310.0, 350.0, 600.0, 2000.0})
    void pressureAndDensityAreInverseToEachOther(double T_K) {
        Isotherm table = oxygen.isotherm(new Temperature(T_K)).orElseThrow();
        Random random = new Random(43);
        for (int i = 0; i < 20_000; i++) {
            double p_Pa = Math.pow(10.0, 7.9 * random.nextDouble());
            double rho = table.density_molPerM3(p_Pa);
            assertThat(table.pressure_Pa(rho) / p_Pa).isCloseTo(1.0, within(1e-13));
            assertThat(table.density_molPerM3(table.pressure_Pa(rho)) / rho).isCloseTo(1.0, within(1e-13));
        }
    }

    @Test
    void bothEndsAreIncludedAndNothingBeyond() {
        Isotherm table = oxygen.isotherm(new Temperature(294.26)).orElseThrow();
        double highest = table.highestPressure_Pa();
        assertThat(table.density_molPerM3(0.0)).isZero();
        assertThat(table.pressure_Pa(0.0)).isZero();
        assertThat(table.pressure_Pa(table.density_molPerM3(highest)) / highest).isCloseTo(1.0, within(1e-13));
        for (double outside : new double[] {-1.0, highest * 1.000001, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException().isThrownBy(() -> table.density_molPerM3(outside));
            assertThatIllegalArgumentException().isThrownBy(() -> table.pressure_Pa(outside));
        }
    }
}
