package org.lowfirst.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Outside the range there is a typed answer: never NaN, never a clamped value, never an exception. */
class OutOfRangeTest {

    private final CaloricEquation oxygen = Oxygen.schmidtWagner();
    private final Temperature room = new Temperature(294.26);

    @Test
    void theAnswerNamesTheQuantityAndItsLimits() {
        assertThat(oxygen.density(AbsolutePressure.ofBar(801), room))
                .isEqualTo(new Evaluated.OutOfRange<>("pressure", 801e5, 0.0, 80e6, "Pa absolute"));
        assertThat(oxygen.density(AbsolutePressure.ofBar(1), new Temperature(159.9)))
                .isEqualTo(new Evaluated.OutOfRange<>("temperature", 159.9, 160.0, 2000.0, "K"));
        assertThat(oxygen.isotherm(new Temperature(2001)))
                .isEqualTo(new Evaluated.OutOfRange<>("temperature", 2001.0, 160.0, 2000.0, "K"));
        Evaluated.OutOfRange<?> dense = (Evaluated.OutOfRange<?>) oxygen.pressure(new Density(30_000), room);
        assertThat(dense.quantity()).isEqualTo("density");
        assertThat(dense.highest()).isBetween(22_000.0, 23_000.0);
        Evaluated.OutOfRange<?> thin = (Evaluated.OutOfRange<?>) oxygen.state(new Density(1e-7), room);
        assertThat(thin.quantity()).isEqualTo("density");
        assertThat(thin.lowest()).isEqualTo(1e-6);
    }

    @Test
    void anEnergyNoStateHasIsAnsweredWithTheEnergiesThereAre() {
        Evaluated.OutOfRange<?> energy = (Evaluated.OutOfRange<?>) oxygen.stateWithEnergy(new Density(5000), -1e9);
        assertThat(energy.quantity()).isEqualTo("internal energy");
        assertThat(energy.lowest()).isLessThan(energy.highest());
        double between = 0.5 * (energy.lowest() + energy.highest());
        assertThat(oxygen.stateWithEnergy(new Density(5000), between)).isInstanceOf(Evaluated.Value.class);
        Evaluated.OutOfRange<?> entropy =
                (Evaluated.OutOfRange<?>) oxygen.stateWithEntropy(AbsolutePressure.ofBar(100), 1e9);
        assertThat(entropy.quantity()).isEqualTo("entropy");
        Evaluated.OutOfRange<?> enthalpy =
                (Evaluated.OutOfRange<?>) oxygen.stateWithEnthalpy(AbsolutePressure.ofBar(100), 1e9);
        assertThat(enthalpy.quantity()).isEqualTo("enthalpy");
        assertThat(oxygen.stateWithEnthalpy(AbsolutePressure.ofBar(100), enthalpy.highest() * (1 - 1e-9)))
                .isInstanceOf(Evaluated.Value.class);
    }

    @Test
    void aPointStaysWhereItWasWhenAMoveFails() {
        StatePoint point = oxygen.newPoint();
        assertThat(point.moveTo(5000, 300)).isTrue();
        double p = point.p_Pa();
        double nan = Double.NaN;
        assertThat(List.of(
                        point.moveTo(-1, 300),
                        point.moveTo(nan, 300),
                        point.moveTo(5000, nan),
                        point.moveTo(5000, 100),
                        point.moveTo(30_000, 1500),
                        point.moveTo(1e9, 300),
                        point.moveToPressure(nan, 300),
                        point.moveToPressure(90e6, 300),
                        point.moveToEnergy(5000, nan, 300),
                        point.moveToEnergy(5000, 1e9, 300),
                        point.moveToEnergy(5000, -1e9, 300),
                        point.moveToEnergy(5000, 6000, nan),
                        point.moveToEntropy(0, 200, 300),
                        point.moveToEntropy(5000, 1e9, 300),
                        point.moveToPressureEnthalpy(-1, 6000, 300),
                        point.moveToPressureEnthalpy(1e7, Double.POSITIVE_INFINITY, 300),
                        point.moveToPressureEntropy(0, 200, 300),
                        point.moveToPressureEntropy(1e7, -1e9, 300)))
                .containsOnly(false);
        assertThat(point.p_Pa()).isEqualTo(p);
        assertThat(point.T_K()).isEqualTo(300.0);
    }

    @Test
    void vacuumHasNoEntropy() {
        StatePoint point = oxygen.newPoint();
        point.moveTo(0.0, 300.0);
        assertThatIllegalStateException()
                .isThrownBy(point::s_JPerMolK)
                .withMessageContaining("must be at least 1.0E-6");
    }

    @Test
    void anyInputHasAFiniteValueOrATypedReason() {
        Random random = new Random(7);
        int values = 0;
        for (int i = 0; i < 20_000; i++) {
            AbsolutePressure pressure = new AbsolutePressure(Math.pow(10, -8 + 20 * random.nextDouble()));
            Temperature temperature = new Temperature(Math.pow(10, -1 + 5 * random.nextDouble()));
            Density density = new Density(Math.pow(10, -8 + 16 * random.nextDouble()));
            double energy = (random.nextDouble() - 0.3) * 4e6;
            double entropy = random.nextDouble() * 20_000;
            for (Evaluated<?> answer : List.of(
                    oxygen.density(pressure, temperature),
                    oxygen.pressure(density, temperature),
                    oxygen.state(pressure, temperature),
                    oxygen.state(density, temperature),
                    oxygen.stateWithEnergy(density, energy),
                    oxygen.stateWithEnthalpy(pressure, energy),
                    oxygen.stateWithEntropy(pressure, entropy),
                    Oxygen.lemmonJacobsen().values(pressure, temperature))) {
                assertThat(answer).isNotInstanceOf(Evaluated.NotConverged.class);
                if (answer instanceof Evaluated.OutOfRange<?> out) {
                    assertThat(out.measured() < out.lowest() || out.measured() > out.highest())
                            .as("%s", out)
                            .isTrue();
                } else {
                    values++;
                    assertFinite(((Evaluated.Value<?>) answer).value());
                }
            }
        }
        assertThat(values).isGreaterThan(10_000);
    }

    private static void assertFinite(Object value) {
        if (value instanceof GasState state) {
            assertThat(new double[] {
                        state.pressure().pascals(), state.temperature().kelvin(), state.compressibility(),
                        state.internalEnergy_JPerKg(), state.enthalpy_JPerKg(), state.entropy_JPerKgK(),
                        state.cv_JPerKgK(), state.cp_JPerKgK(), state.soundSpeed_mPerS()
                    })
                    .doesNotContain(Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
            assertThat(state.soundSpeed_mPerS()).isPositive();
        } else if (value instanceof Transport.Values values) {
            assertThat(values.viscosity_PaS()).isPositive().isFinite();
            assertThat(values.conductivity_WPerMK()).isPositive().isFinite();
        } else {
            assertThat(value).isInstanceOfAny(Density.class, AbsolutePressure.class);
        }
    }
}
