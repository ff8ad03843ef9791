package org.lowfirst.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Relations that hold for every gas, over a grid of the whole range; derivatives by central differences. */
class PropertyIdentitiesConsistencyTest {

    private static final double[] KELVIN = {161.0, 180.0, 210.0, 250.0, 273.15, 294.26, 340.0, 420.0, 700.0, 1500.0};
    private static final double[] PASCAL = {1e2, 1e5, 1e6, 4e6, 6e6, 1e7, 1.5e7, 3e7, 7.5e7};
    private static final Offset<Double> BY_DIFFERENCES = within(2e-7);
    private static final Offset<Double> EXACT = within(1e-12);

    static Stream<Arguments> states() {
        Stream<CaloricEquation> gases = Stream.of(Oxygen.schmidtWagner(), new IdealGas("oxygen", 0.0319988));
        return gases.flatMap(gas -> java.util.Arrays.stream(KELVIN)
                .boxed()
                .flatMap(t -> java.util.Arrays.stream(PASCAL).mapToObj(p -> Arguments.of(gas, p, t))));
    }

    /** A point and its neighbours at a slightly different density or temperature. */
    private record Neighbours(
            StatePoint at, StatePoint denser, StatePoint thinner, StatePoint hotter, StatePoint colder) {

        static Neighbours of(CaloricEquation gas, double p_Pa, double T_K) {
            StatePoint at = gas.newPoint();
            assertThat(at.moveToPressure(p_Pa, T_K)).isTrue();
            double rho = at.rho_molPerM3();
            return new Neighbours(
                    at,
                    moved(gas, rho * (1 + 1e-5), T_K),
                    moved(gas, rho * (1 - 1e-5), T_K),
                    moved(gas, rho, T_K * (1 + 1e-5)),
                    moved(gas, rho, T_K * (1 - 1e-5)));
        }

        private static StatePoint moved(CaloricEquation gas, double rho, double T_K) {
            StatePoint point = gas.newPoint();
            assertThat(point.moveTo(rho, T_K)).isTrue();
            return point;
        }
    }

    @ParameterizedTest
    @MethodSource("states")
    void derivativesAreThoseOfThePropertiesThemselves(CaloricEquation gas, double p_Pa, double T_K) {
        Neighbours n = Neighbours.of(gas, p_Pa, T_K);
        StatePoint at = n.at();
        double dT = n.hotter().T_K() - n.colder().T_K();
        double dRho = n.denser().rho_molPerM3() - n.thinner().rho_molPerM3();
        assertThat((n.hotter().u_JPerMol() - n.colder().u_JPerMol()) / dT / at.cv_JPerMolK())
                .as("cv = (du/dT)_rho")
                .isCloseTo(1.0, BY_DIFFERENCES);
        assertThat((n.hotter().s_JPerMolK() - n.colder().s_JPerMolK()) / dT * T_K / at.cv_JPerMolK())
                .as("cv = T (ds/dT)_rho")
                .isCloseTo(1.0, BY_DIFFERENCES);
        assertThat((n.hotter().p_Pa() - n.colder().p_Pa()) / dT / at.dpdT_PaPerK())
                .as("(dp/dT)_rho")
                .isCloseTo(1.0, BY_DIFFERENCES);
        assertThat((n.denser().p_Pa() - n.thinner().p_Pa()) / dRho / at.dpdrho_PaM3PerMol())
                .as("(dp/drho)_T")
                .isCloseTo(1.0, within(1e-5));
        double byDensity = (n.denser().u_JPerMol() - n.thinner().u_JPerMol()) / dRho;
        double scale = gasConstant(at) * T_K / at.rho_molPerM3();
        assertThat((byDensity - at.dudrho_JM3PerMol2()) / scale)
                .as("(du/drho)_T")
                .isCloseTo(0.0, within(1e-6));
        double entropyByDensity = (n.denser().s_JPerMolK() - n.thinner().s_JPerMolK()) / dRho;
        double maxwell = -at.dpdT_PaPerK() / (at.rho_molPerM3() * at.rho_molPerM3());
        assertThat(entropyByDensity / maxwell).as("Maxwell: (ds/drho)_T").isCloseTo(1.0, within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("states")
    void propertiesBelongTogether(CaloricEquation gas, double p_Pa, double T_K) {
        StatePoint at = gas.newPoint();
        at.moveToPressure(p_Pa, T_K);
        double rho = at.rho_molPerM3();
        assertThat(at.h_JPerMol() / (at.u_JPerMol() + at.p_Pa() / rho))
                .as("h = u + p v")
                .isCloseTo(1.0, EXACT);
        assertThat(at.compressibility() * rho * gasConstant(at) * T_K / p_Pa)
                .as("Z")
                .isCloseTo(1.0, EXACT);
        double mayer = T_K * Math.pow(at.dpdT_PaPerK() / rho, 2) / at.dpdrho_PaM3PerMol();
        assertThat((at.cp_JPerMolK() - at.cv_JPerMolK()) / mayer).as("cp - cv").isCloseTo(1.0, within(1e-10));
        double squared = at.cp_JPerMolK() / at.cv_JPerMolK() * at.dpdrho_PaM3PerMol() / gas.molarMass_kgPerMol();
        assertThat(at.soundSpeed_mPerS() / Math.sqrt(squared)).as("w").isCloseTo(1.0, EXACT);
        double energy = (at.p_Pa() - T_K * at.dpdT_PaPerK()) / (rho * rho);
        double scale = gasConstant(at) * T_K / rho;
        assertThat((energy - at.dudrho_JM3PerMol2()) / scale)
                .as("(du/drho)_T = (p - T dp/dT) / rho^2")
                .isCloseTo(0.0, within(1e-11));
        assertThat(at.dpdrho_PaM3PerMol()).as("stable").isPositive();
        assertThat(at.cv_JPerMolK()).as("stable").isPositive();
    }

    /** R as the gas itself shows it: p / (rho T) towards vacuum. */
    private static double gasConstant(StatePoint at) {
        return at.p_Pa() / (at.rho_molPerM3() * at.T_K() * at.compressibility());
    }

    @ParameterizedTest
    @MethodSource("states")
    void everySearchFindsTheStateItStartedFrom(CaloricEquation gas, double p_Pa, double T_K) {
        StatePoint at = gas.newPoint();
        at.moveToPressure(p_Pa, T_K);
        StatePoint found = gas.newPoint();
        assertThat(found.moveToEnergy(at.rho_molPerM3(), at.u_JPerMol(), 300.0)).isTrue();
        assertThat(found.T_K() / T_K).isCloseTo(1.0, within(1e-11));
        assertThat(found.moveToEntropy(at.rho_molPerM3(), at.s_JPerMolK(), 300.0))
                .isTrue();
        assertThat(found.T_K() / T_K).isCloseTo(1.0, within(1e-11));
        assertThat(found.moveToPressureEnthalpy(p_Pa, at.h_JPerMol(), 300.0)).isTrue();
        assertThat(found.T_K() / T_K).isCloseTo(1.0, within(1e-11));
        assertThat(found.moveToPressureEntropy(p_Pa, at.s_JPerMolK(), 300.0)).isTrue();
        assertThat(found.T_K() / T_K).isCloseTo(1.0, within(1e-11));
        assertThat(found.rho_molPerM3() / at.rho_molPerM3()).isCloseTo(1.0, within(1e-9));
    }

    @Test
    void towardsVacuumTheRealGasIsIdeal() {
        StatePoint point = Oxygen.schmidtWagner().newPoint();
        assertThat(point.moveTo(0.0, 294.26)).isTrue();
        assertThat(point.p_Pa()).isZero();
        assertThat(point.compressibility()).isEqualTo(1.0);
        assertThat(point.cp_JPerMolK() - point.cv_JPerMolK()).isCloseTo(8.31434, within(1e-12));
        // Second virial coefficient: oxygen attracts at 294 K, so energy falls with density.
        assertThat(point.dudrho_JM3PerMol2()).isNegative();
    }
}
