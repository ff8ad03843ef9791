package org.lowfirst.web.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.Units;
import org.lowfirst.web.words.Words;

final class FiguresTest {

    private final Figures metric = new Figures(Units.METRIC);
    private final Figures us = new Figures(Units.US);
    private final Times times = new Times(Words.in(Locale.ENGLISH), ZoneOffset.UTC);

    @Test
    void pressuresAreShownToOneBarOrTenPsi() {
        assertThat(metric.pressure(GaugePressure.ofBar(112.8))).isEqualTo("113");
        assertThat(metric.pressureWithUnit(GaugePressure.ofBar(112.8))).isEqualTo("113 bar");
        assertThat(us.pressure(GaugePressure.ofPsi(2013))).isEqualTo("2,010");
        assertThat(us.pressureWithUnit(GaugePressure.ofPsi(2015.1))).isEqualTo("2,020 psi");
    }

    @Test
    void whatIsToBeTypedIsUngrouped() {
        assertThat(us.toType(GaugePressure.ofPsi(2013))).isEqualTo("2010");
        assertThat(us.toTypeBelow(GaugePressure.ofPsi(2019.9))).isEqualTo("2010");
        assertThat(metric.toTypeBelow(GaugePressure.ofBar(123.8))).isEqualTo("123");
    }

    @Test
    void aPressureStatedInAnotherUnitKeepsIt() {
        assertThat(metric.toType(StatedPressure.of("2015", PressureUnit.PSI))).isEqualTo("2015 psi");
        assertThat(metric.toType(StatedPressure.of("150.0", PressureUnit.BAR))).isEqualTo("150");
    }

    @ParameterizedTest
    @CsvSource({
        "2026-06-14T10:05:20Z, just now",
        "2026-06-14T10:00:00Z, 5 min ago",
        "2026-06-14T08:30:00Z, today 08:30",
        "2026-06-13T17:40:00Z, yesterday 17:40",
        "2026-06-04T17:40:00Z, '10 days ago, 4 Jun'"
    })
    void agesAreSaidAsPeopleSayThem(Instant then, String age) {
        assertThat(times.age(then, Instant.parse("2026-06-14T10:05:40Z"))).isEqualTo(age);
    }
}
