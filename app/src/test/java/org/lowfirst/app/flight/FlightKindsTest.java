package org.lowfirst.app.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.app.file.Kind;
import org.lowfirst.gas.Parsed;

/** How altitudes, times, flows, shares and rates are typed. Foot and cubic foot are exact by definition. */
final class FlightKindsTest {

    @ParameterizedTest
    @CsvSource({"'12,500 ft', 3810", "8000 Feet, 2438.4", "2400 m, 2400", "-30 m, -30"})
    void altitudes(String typed, double metres) {
        assertThat(FlightKinds.ALTITUDE.read().apply(typed).orElseThrow().metres())
                .isCloseTo(metres, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"30 min, 1800", "1.5 h, 5400", "'1,5 hours', 5400", "90 s, 90"})
    void times(String typed, long seconds) {
        assertThat(FlightKinds.TIME.read().apply(typed).orElseThrow()).isEqualTo(Duration.ofSeconds(seconds));
    }

    @ParameterizedTest
    @CsvSource({"1.2 L/min, 1.2", "60 L/h, 1", "1 lpm, 1", "2.118880003 cu ft/h, 1"})
    void flows(String typed, double litresPerMinute) {
        assertThat(FlightKinds.FLOW.read().apply(typed).orElseThrow()).isCloseTo(litresPerMinute, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"500 ft/min, 2.54", "2.5 m/s, 2.5"})
    void descents(String typed, double metresPerSecond) {
        assertThat(FlightKinds.DESCENT.read().apply(typed).orElseThrow()).isCloseTo(metresPerSecond, within(1e-12));
    }

    @Test
    void aBareNumberIsRefusedWithTheUnits() {
        assertThat(problem(FlightKinds.ALTITUDE, "8000")).isEqualTo("8000 needs a unit: ft or m.");
        assertThat(problem(FlightKinds.TIME, "30")).isEqualTo("30 needs a unit: min, h or s.");
        assertThat(problem(FlightKinds.FLOW, "1.2")).isEqualTo("1.2 needs a unit: L/min, L/h or cu ft/h.");
        assertThat(problem(FlightKinds.SHARE, "10")).isEqualTo("10 needs a unit: %.");
        assertThat(problem(FlightKinds.DESCENT, "500")).isEqualTo("500 needs a unit: ft/min or m/s.");
        assertThat(problem(FlightKinds.TIME, "-5 min")).isEqualTo("The time (-5 min) must not be below zero.");
    }

    private static String problem(Kind<?> kind, String typed) {
        return ((Parsed.Unreadable<?>) kind.read().apply(typed)).problem();
    }
}
