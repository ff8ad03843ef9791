package org.lowfirst.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantitiesTest {

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            2,015 psi       ; 2015   ; psi
            2015psi         ; 2015   ; psi
            2 015 psi       ; 2015   ; psi
            2 015 psi       ; 2015   ; psi
            2,015.5 psi     ; 2015.5 ; psi
            150 bar         ; 150    ; bar
            150 Bar g       ; 150    ; bar
            150 bar(g)      ; 150    ; bar
            1.450,5 bar     ; 1450.5 ; bar
            1.450 bar       ; 1.45   ; bar
            1,450 bar       ; 1450   ; bar
            0,125 bar       ; 0.125  ; bar
            62,5 bar        ; 62.5   ; bar
            1,45 bar        ; 1.45   ; bar
            1,4500 bar      ; 1.45   ; bar
            1.5e3 kPa       ; 1500   ; kPa
            1.5E3kPa        ; 1500   ; kPa
            15 MPa          ; 15     ; MPa
            15 mpa          ; 15     ; MPa
            1,234,567 kPa   ; 1234567; kPa
            1.234.567 kPa   ; 1234567; kPa
            +150 bar        ; 150    ; bar
            .5 bar          ; 0.5    ; bar
            5. bar          ; 5      ; bar
            0 psi           ; 0      ; psi
            -0 psi          ; 0      ; psi
            300 psig        ; 300    ; psi
            """)
    void gaugePressuresAreRead(String text, double number, String unit) {
        Parsed.Read<Pressure> read = (Parsed.Read<Pressure>) Quantities.pressure(text);
        assertThat(read.number()).isEqualTo(number);
        assertThat(read.unit()).isEqualTo(unit);
        assertThat(read.text()).isEqualTo(text);
        assertThat(read.value()).isInstanceOf(GaugePressure.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            14.7 psia         ; psia ; 101352.932
            1.01325 bara      ; bara ; 101325
            1.01325 bar abs   ; bara ; 101325
            101.325 kPaa      ; kPaa ; 101325
            101.325 kPa abs   ; kPaa ; 101325
            0.101325 MPa(a)   ; MPaa ; 101325
            """)
    void absolutePressuresAreRead(String text, String unit, double pascals) {
        Parsed.Read<Pressure> read = (Parsed.Read<Pressure>) Quantities.pressure(text);
        assertThat(read.unit()).isEqualTo(unit);
        assertThat(read.value()).isInstanceOf(AbsolutePressure.class);
        assertThat(((AbsolutePressure) read.value()).pascals()).isCloseTo(pascals, within(0.001));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            70 F           ; 294.2611111111111
            70°F           ; 294.2611111111111
            70 deg F       ; 294.2611111111111
            21 C           ; 294.15
            -5 °C          ; 268.15
            −5 °C          ; 268.15
            -40 F          ; 233.15
            294.26 K       ; 294.26
            20,5 celsius   ; 293.65
            """)
    void temperaturesAreRead(String text, double kelvin) {
        assertThat(Quantities.temperature(text).orElseThrow().kelvin()).isCloseTo(kelvin, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            2.9 L          ; 2.9
            2,9 L          ; 2.9
            2,9 litres     ; 2.9
            0 L            ; 0
            0.1 cu ft      ; 2.8316846592
            0.1 cu. ft.    ; 2.8316846592
            0.1 ft³        ; 2.8316846592
            177 cu in      ; 2.900510328
            0.05 m3        ; 50
            """)
    void volumesAreRead(String text, double litres) {
        assertThat(Quantities.volume(text).orElseThrow().toLitres()).isCloseTo(litres, within(1e-9));
    }

    @Test
    void massesAreRead() {
        assertThat(Quantities.mass("2.3 kg").orElseThrow().kilograms()).isEqualTo(2.3);
        assertThat(Quantities.mass("5.3 lb").orElseThrow().kilograms()).isCloseTo(2.404039561, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '|', textBlock = """
            150            ; 3 ; 150 needs a unit: psi, bar, kPa or MPa.
            |  1,450 |     ; 7 ; 1,450 needs a unit: psi, bar, kPa or MPa.
            ||             ; 0 ; Nothing was typed where a pressure is needed, e.g. 150 bar.
            |   |          ; 0 ; Nothing was typed where a pressure is needed, e.g. 150 bar.
            bar            ; 0 ; 'bar' does not start with a number. Please type a pressure such as 150 bar.
            NaN bar        ; 0 ; 'NaN bar' does not start with a number. Please type a pressure such as 150 bar.
            Infinity bar   ; 0 ; 'Infinity bar' does not start with a number. Please type a pressure such as 150 bar.
            1e999 bar      ; 0 ; '1e999' is too large a number. Please type a pressure such as 150 bar.
            15 0 bar       ; 0 ; The space in '15 0' does not set thousands apart. Please type a pressure such as 150 bar.
            1,2,3 bar      ; 0 ; The commas and points in '1,2,3' do not make a number. Please type a pressure such as 150 bar.
            1.2.3,4 bar    ; 0 ; The commas and points in '1.2.3,4' do not make a number. Please type a pressure such as 150 bar.
            -5 bar         ; 0 ; The pressure (-5 bar) must not be below zero.
            -5 psia        ; 0 ; The pressure (-5 psia) must not be below zero.
            150 atm        ; 4 ; |'atm' is not a unit known here; a pressure needs psi, bar, kPa or MPa.|
            150 bar ish    ; 4 ; |'bar ish' is not a unit known here; a pressure needs psi, bar, kPa or MPa.|
            70 F           ; 3 ; |'70 F' is a temperature; a pressure is needed here, in psi, bar, kPa or MPa.|
            2.9 L          ; 4 ; |'2.9 L' is a volume; a pressure is needed here, in psi, bar, kPa or MPa.|
            """)
    void whatIsNoPressureIsRefusedInOneSentence(String text, int position, String problem) {
        Parsed.Unreadable<Pressure> unreadable = (Parsed.Unreadable<Pressure>) Quantities.pressure(text);
        assertThat(unreadable.problem()).isEqualTo(problem);
        assertThat(unreadable.position()).isEqualTo(position);
        assertThat(unreadable.text()).isEqualTo(text);
    }

    @Test
    void otherKindsSayWhatTheyNeed() {
        assertThat(problem(Quantities.temperature("150 bar")))
                .isEqualTo("'150 bar' is a pressure; a temperature is needed here, in F, C or K.");
        assertThat(problem(Quantities.temperature("70"))).isEqualTo("70 needs a unit: F, C or K.");
        assertThat(problem(Quantities.temperature("-300 C")))
                .isEqualTo("-300 C must be above absolute zero, -273.15 C.");
        assertThat(problem(Quantities.temperature("0 K"))).isEqualTo("0 K must be above absolute zero, 0.00 K.");
        assertThat(problem(Quantities.volume("2.9"))).isEqualTo("2.9 needs a unit: L, cu ft, cu in or m3.");
        assertThat(problem(Quantities.volume("-1 L"))).isEqualTo("The volume (-1 L) must not be below zero.");
        assertThat(problem(Quantities.volume("9".repeat(80) + " L")))
                .isEqualTo("The text is longer than 60 characters; a volume such as 2.9 L is needed.");
    }

    @Test
    void anAbsolutePressureCanBeAskedForAsAGaugeReading() {
        AbsolutePressure ambient = StandardAtmosphere.PRESSURE;
        assertThat(Quantities.gaugePressure("2.01325 bara", ambient)
                        .orElseThrow()
                        .toBar())
                .isCloseTo(1.0, within(1e-12));
        assertThat(problem(Quantities.gaugePressure("0.5 bara", ambient)))
                .isEqualTo("'0.5 bara' is below the pressure of the surroundings, so no gauge can show it.");
    }

    @Test
    void aKindOfOnesOwnIsReadByTheSameRules() {
        QuantityKind height = QuantityKind.of("a height", "ft or m", "8000 ft", "ft: ft feet", "m: m metres");
        Parsed<String> read = Quantities.read("12,500 Feet", height, (number, unit) -> number + " " + unit);
        assertThat(read).isEqualTo(new Parsed.Read<>("12500.0 ft", 12_500.0, "ft", "12,500 Feet"));
        assertThat(problem(Quantities.read("12500", height, (number, unit) -> number)))
                .isEqualTo("12500 needs a unit: ft or m.");
        assertThat(problem(Quantities.read("12 kg", height, (number, unit) -> number)))
                .isEqualTo("'12 kg' is a mass; a height is needed here, in ft or m.");
        assertThat(problem(Quantities.read("-3 m", height, (number, unit) -> number)))
                .isEqualTo("The height (-3 m) must not be below zero.");
        assertThat(Quantities.read("-3 m", height.withSign(), (number, unit) -> number)
                        .orElseThrow())
                .isEqualTo(-3.0);
    }

    private static String problem(Parsed<?> parsed) {
        return ((Parsed.Unreadable<?>) parsed).problem();
    }
}
