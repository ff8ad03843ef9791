package org.lowfirst.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;

final class ShownReadingsTest {

    private final ShownReadings psi = new ShownReadings(PressureUnit.PSI);
    private final ShownReadings bar = new ShownReadings(PressureUnit.BAR);

    @Test
    void expectedReadingsAreAsFineAsAGauge() {
        assertThat(psi.expected(GaugePressure.ofPsi(1091.3))).isEqualTo("1,090");
        assertThat(bar.expected(GaugePressure.ofBar(112.8))).isEqualTo("113");
    }

    @Test
    void aLimitIsNeverRoundedUp() {
        assertThat(psi.limit(GaugePressure.ofPsi(1908.99))).isEqualTo("1,908");
        assertThat(psi.limit(GaugePressure.ofPsi(2015))).isEqualTo("2,015");
        assertThat(bar.limit(GaugePressure.ofBar(138.93))).isEqualTo("138");
        assertThat(new ShownReadings(PressureUnit.MEGAPASCAL).limit(GaugePressure.ofBar(138.99)))
                .isEqualTo("13.89");
    }

    @Test
    void givenReadingsComeBackAsTyped() {
        assertThat(psi.given(GaugePressure.ofPsi(2015))).isEqualTo("2,015");
        assertThat(bar.given(GaugePressure.ofBar(62.5))).isEqualTo("62.5");
        assertThat(bar.given(GaugePressure.ofBar(200))).isEqualTo("200");
    }

    @Test
    void computedReadingsAreNotMistakenForTypedOnes() {
        assertThat(bar.found(GaugePressure.ofBar(62.5))).isEqualTo("62.5");
        assertThat(bar.found(GaugePressure.ofBar(112.8137))).isEqualTo("113");
    }
}
