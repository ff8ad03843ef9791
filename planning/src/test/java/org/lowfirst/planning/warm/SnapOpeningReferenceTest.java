package org.lowfirst.planning.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;

/**
 * Compression without heat or loss from 20 C and one atmosphere, computed outside this project with the Schmidt and Wagner equation
 * and with a constant ratio of heat capacities; the published tables of the safety guides were not seen.
 */
class SnapOpeningReferenceTest {

    private static SnapOpening snap(double psia) {
        return SnapOpening.of(
                        StandardAtmosphere.PRESSURE,
                        Temperature.ofCelsius(20),
                        AbsolutePressure.of(psia, PressureUnit.PSI),
                        Oxygen.schmidtWagner())
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"500, 756.18, 803.04", "1000, 896.98, 978.92", "2000, 1059.75, 1193.32", "3000, 1166.54, 1339.89"})
    void bothRulesGiveTheReference(double psia, double real_K, double ideal_K) {
        assertThat(snap(psia).realGas().kelvin()).isCloseTo(real_K, within(0.0055));
        assertThat(snap(psia).constantGamma().kelvin()).isCloseTo(ideal_K, within(0.0055));
    }

    @ParameterizedTest
    @CsvSource({
        "50, 3.4, 143, 140",
        "100, 6.8, 234, 226",
        "200, 13.6, 345, 326",
        "300, 20.4, 421, 392",
        "500, 34.0, 530, 483",
        "1000, 68.0, 706, 624",
        "2000, 136.1, 920, 787",
        "2200, 149.7, 953, 811",
        "3000, 204.1, 1067, 893"
    })
    void theTableInDegreesCelsius(double psia, double ratio, double ideal_C, double real_C) {
        assertThat(snap(psia).ratio()).isCloseTo(ratio, within(0.055));
        assertThat(snap(psia).constantGamma().toCelsius()).isCloseTo(ideal_C, within(0.55));
        assertThat(snap(psia).realGas().toCelsius()).isCloseTo(real_C, within(0.55));
    }

    /** Rows of a safety guide on oxygen systems, from memory: 100 psia 234 C, 200 psia 344 C, by the simple rule. */
    @ParameterizedTest
    @CsvSource({"100, 234", "200, 344"})
    void theRememberedRowsOfTheSafetyGuide(double psia, double celsius) {
        assertThat(snap(psia).constantGamma().toCelsius()).isCloseTo(celsius, within(1.0));
    }

    @Test
    void aSupplyBelowTheDeadEndIsRefused() {
        assertThat(Shop.refusal(SnapOpening.of(
                                AbsolutePressure.ofBar(20),
                                Temperature.ofCelsius(20),
                                AbsolutePressure.ofBar(10),
                                Oxygen.schmidtWagner()))
                        .code())
                .isEqualTo("number-out-of-range");
        assertThat(Shop.refusal(SnapOpening.of(
                                AbsolutePressure.ofBar(1),
                                Temperature.ofCelsius(200),
                                AbsolutePressure.ofBar(10),
                                Oxygen.schmidtWagner()))
                        .code())
                .isEqualTo("temperature-out-of-range");
    }
}
