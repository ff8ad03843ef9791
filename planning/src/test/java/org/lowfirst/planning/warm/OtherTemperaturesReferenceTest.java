package org.lowfirst.planning.warm;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.ReferenceCondition;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.ReferenceRule;

/** Settled pressures and contents against tables computed outside this project, and against a published chart. */
class OtherTemperaturesReferenceTest {

    private static final EquationOfState OXYGEN = Oxygen.schmidtWagner();

    static Stream<List<String>> rows() throws IOException {
        return Shop.rows("settled-pressure-oxygen-coolprop.csv").stream().skip(1);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void aFullCylinderReadsWhatTheTableSays(List<String> row) {
        ReferenceRule rule = ReferenceRule.valueOf(row.get(0));
        PressureUnit unit = PressureUnit.valueOf(row.get(2));
        GaugePressure full = GaugePressure.of(Double.parseDouble(row.get(1)), unit);
        Temperature there = Temperature.of(Double.parseDouble(row.get(3)), TemperatureUnit.valueOf(row.get(4)));
        SameGas same = OtherTemperatures.read(
                        AtOtherTemperatures.of(full, rule.temperature(), there).rated(full, rule), OXYGEN)
                .orElseThrow();
        assertThat(same.readings().get(0).reading().to(unit))
                .isCloseTo(Double.parseDouble(row.get(5)), within(unit == PressureUnit.PSI ? 0.55 : 0.055));
        assertThat(requireNonNull(same.full()).percent()).isCloseTo(100.0, within(1e-9));

        SameGas back = OtherTemperatures.read(
                        AtOtherTemperatures.of(same.readings().get(0).reading(), there, rule.temperature())
                                .rated(full, rule),
                        OXYGEN)
                .orElseThrow();
        assertThat(back.readings().get(0).reading().to(unit)).isCloseTo(full.to(unit), within(1e-6));
        assertThat(requireNonNull(back.full()).percent()).isCloseTo(100.0, within(1e-7));
        assertThat(requireNonNull(back.full()).full().to(unit))
                .isCloseTo(same.readings().get(0).reading().to(unit), within(1e-6));
    }

    /** Chart of an aeroplane operator's manual (read): 1,600 psig at 20 C is 1,250 psig at -30 C; lines 50 psi apart. */
    @Test
    void thePublishedChartIsReadWithinHalfALine() {
        SameGas same = OtherTemperatures.read(
                        AtOtherTemperatures.of(
                                GaugePressure.ofPsi(1600), Temperature.ofCelsius(20), Temperature.ofCelsius(-30)),
                        OXYGEN)
                .orElseThrow();
        assertThat(same.readings().get(0).reading().toPsi()).isCloseTo(1250, within(25.0));
    }

    /** Contents at 294.26 K and one atmosphere; litres as printed. */
    @ParameterizedTest
    @CsvSource({
        "1.2, 2015, 176.4, 0.06",
        "1.7, 2015, 249.9, 0.06",
        "2.9, 2015, 426.4, 0.06",
        "4.6, 2015, 676.3, 0.06",
        "10.6, 2216, 1715, 0.6",
        "21.9, 2200, 3518, 0.6",
        "49.9, 2265, 8252, 0.6"
    })
    void contentsAreThoseOfTheTable(double litres, double psi, double free, double half) {
        SameGas same = OtherTemperatures.read(
                        AtOtherTemperatures.of(GaugePressure.ofPsi(psi), new Temperature(294.26))
                                .in(Volume.ofLitres(litres), ReferenceCondition.US_70F_1ATM),
                        OXYGEN)
                .orElseThrow();
        assertThat(requireNonNull(same.contents()).freeVolume().toLitres()).isCloseTo(free, within(half));
    }
}
