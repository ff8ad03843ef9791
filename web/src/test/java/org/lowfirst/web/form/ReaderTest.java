package org.lowfirst.web.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.Units;
import org.lowfirst.web.words.Words;

final class ReaderTest {

    private static final Words WORDS = Words.in(Locale.ENGLISH);

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"113;113", "112,5;112.5", "112.5;112.5", " 62 ;62", "0;0", "1 bar;1"})
    void aPressureIsTakenInTheUnitOfTheBench(String typed, String value) {
        Reader reader = metric(typed);
        StatedPressure pressure = Objects.requireNonNull(reader.pressure("p"));
        assertThat(pressure.value().toPlainString()).isEqualTo(value);
        assertThat(pressure.unit()).isEqualTo(PressureUnit.BAR);
        assertThat(reader.form().sound()).isTrue();
    }

    @Test
    void anotherUnitMayBeTypedBehindTheNumber() {
        assertThat(metric("2,015 psi").pressure("p")).isEqualTo(StatedPressure.of("2015", PressureUnit.PSI));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "1,450;1450 bar is more than any cylinder here can hold. If it is psi, type 1450 psi.",
                "-5;The pressure (-5 bar) must not be below zero.",
                "62 bara;62 bara is an absolute pressure. Type what the gauge shows.",
                "9999999;9999999 bar is more than any cylinder here can hold. Read the gauge again."
            })
    void whatCannotBeIsRefusedWithItsValueAndWhatToDo(String typed, String sentence) {
        Reader reader = metric(typed);
        assertThat(reader.pressure("p")).isNull();
        assertThat(reader.form().fault("p")).isEqualTo(sentence);
    }

    /** A thousand and half as much again for one, one and a half for another: a price must not be off by a factor of 1000. */
    @Test
    void aNumberThatCanBeReadInTwoWaysIsAskedFor() {
        Reader reader = metric("1,450");
        assertThat(reader.numberIfTyped("p")).isNull();
        assertThat(reader.form().fault("p")).startsWith("1,450 can be read in two ways.");
        assertThat(reader.form().value("p")).isEqualTo("1,450");
        assertThat(metric("0,125").numberIfTyped("p")).isEqualByComparingTo("0.125");
        assertThat(metric("1,45").numberIfTyped("p")).isEqualByComparingTo("1.45");
        assertThat(metric("1450").numberIfTyped("p")).isEqualByComparingTo("1450");
    }

    @ParameterizedTest
    @ValueSource(strings = {"12o", "abc", "1.2.3", "62 furlongs", "20 C"})
    void whatIsNoPressureIsRefusedAndKept(String typed) {
        Reader reader = metric(typed);
        assertThat(reader.pressure("p")).isNull();
        assertThat(reader.form().fault("p")).isNotEmpty();
        assertThat(reader.form().value("p")).isEqualTo(typed);
    }

    @Test
    void anEmptyFieldIsAFaultOnlyWhereANumberIsNeeded() {
        Reader needed = metric("");
        assertThat(needed.pressure("p")).isNull();
        assertThat(needed.form().fault("p")).isEqualTo("Type the gauge reading in bar.");
        Reader offered = metric(" ");
        assertThat(offered.pressureIfTyped("p")).isNull();
        assertThat(offered.form().sound()).isTrue();
    }

    @Test
    void temperaturesAreTakenInTheUnitOfTheBenchAndMayBeBelowZero() {
        StatedTemperature cold = Objects.requireNonNull(metric("-5").temperatureIfTyped("p"));
        assertThat(cold.temperature().toCelsius()).isCloseTo(-5.0, org.assertj.core.api.Assertions.within(1e-9));
        Reader hot = metric("200");
        assertThat(hot.temperatureIfTyped("p")).isNull();
        assertThat(hot.form().faulty("p")).isTrue();
    }

    @Test
    void waterVolumesAreLitresUnlessAnotherUnitIsTyped() {
        assertThat(metric("4,6").waterVolume("p"))
                .isEqualTo(new StatedVolume(new java.math.BigDecimal("4.6"), VolumeUnit.LITRE));
        StatedVolume feet = Objects.requireNonNull(metric("0.1 cu ft").waterVolume("p"));
        assertThat(feet.unit()).isEqualTo(VolumeUnit.CUBIC_FOOT);
    }

    @Test
    void theFirstFaultOfAFieldStaysAndTheFirstFieldGetsTheFocus() {
        Reader reader = metric("x");
        reader.pressure("p");
        reader.fault("p", "another");
        reader.fault("q", "second");
        assertThat(reader.form().fault("p")).isNotEqualTo("another");
        assertThat(reader.form().first("p")).isTrue();
        assertThat(reader.form().first("q")).isFalse();
    }

    private static Reader metric(String typed) {
        return new Reader(Map.of("p", typed), Units.METRIC, WORDS);
    }
}
