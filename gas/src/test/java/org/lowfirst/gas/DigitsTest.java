package org.lowfirst.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A space, not a comma or point, between thousands where the decimal sign is a comma: ISO 80000-1 clause 7.3.1 (from memory). */
class DigitsTest {

    private static final Digits ENGLISH = Digits.in(Locale.ENGLISH);
    private static final Digits GERMAN = Digits.in(Locale.GERMAN);

    @Test
    void aNumberIsWrittenWithTheSignsOfItsLanguage() {
        assertThat(ENGLISH.of(1450.55, 1)).isEqualTo("1,450.6");
        assertThat(GERMAN.of(1450.55, 1)).isEqualTo("1\u202f450,6");
        assertThat(GERMAN.of(new BigDecimal("12345.670"))).isEqualTo("12\u202f345,670");
    }

    @Test
    void nothingIsBelowZeroWhenItIsShownAsZero() {
        assertThat(ENGLISH.of(-0.04, 1)).isEqualTo("0.0");
        assertThat(GERMAN.of(-0.4, 0)).isEqualTo("0");
        assertThat(GERMAN.of(-0.6, 1)).isEqualTo("-0,6");
    }

    @Test
    void whatWouldBeTypedHasNoSignsBetweenThousandsAndNoNeedlessZeros() {
        assertThat(GERMAN.plain(new BigDecimal("1450.50"))).isEqualTo("1450,5");
        assertThat(ENGLISH.plain(new BigDecimal("1.2E+3"))).isEqualTo("1200");
        assertThat(GERMAN.typed(new BigDecimal("1.50"))).isEqualTo("1,50");
    }

    @Test
    void whatIsWrittenIsReadBack() {
        for (Digits digits : new Digits[] {ENGLISH, GERMAN}) {
            assertThat(Quantities.volume(digits.of(2015.5, 1) + " L")
                            .orElseThrow()
                            .toLitres())
                    .isCloseTo(2015.5, within(1e-9));
        }
    }
}
