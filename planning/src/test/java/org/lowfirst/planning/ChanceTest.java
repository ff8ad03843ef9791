package org.lowfirst.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ChanceTest {

    @ParameterizedTest
    @CsvSource({
        "0, under 1, under 1",
        "0.004, under 1, under 1",
        "0.01, 1, 1",
        "0.126, 13, 12",
        "0.896, 90, 89",
        "0.9, 90, 90",
        "0.99, 99, 99",
        "0.995, over 99, over 99",
        "1, over 99, over 99"
    })
    void isNeverToldAsNoneOrCertain(double chance, String percent, String down) {
        assertThat(Chance.percent(chance, Locale.ENGLISH)).isEqualTo(percent);
        assertThat(Chance.percentDown(chance, Locale.ENGLISH)).isEqualTo(down);
    }

    @ParameterizedTest
    @CsvSource({"0, unter 1", "1, über 99"})
    void isToldInGermanToo(double chance, String percent) {
        assertThat(Chance.percent(chance, Locale.GERMAN)).isEqualTo(percent);
    }
}
