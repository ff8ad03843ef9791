package org.lowfirst.planning.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.AbsolutePressure;

/**
 * The ICAO standard atmosphere against its tabulated pressures: 1976 tables for 0 to 40,000 ft, values in hPa with one decimal
 * (computed outside this project with the standard formula; agree with ICAO Doc 7488 as remembered).
 */
class StandardDayReferenceTest {

    @ParameterizedTest
    @CsvSource({
        "0, 1013.25",
        "5000, 843.1",
        "8000, 752.6",
        "10000, 696.8",
        "12000, 644.4",
        "12500, 631.8",
        "14000, 595.2",
        "15000, 571.8",
        "18000, 506.0",
        "20000, 465.6",
        "25000, 376.0",
        "30000, 300.9",
        "40000, 187.5"
    })
    void pressureFollowsTheTable(double feet, double hPa) {
        double p = StandardDay.pressure(Altitude.ofFeet(feet)).pascals() / 100.0;
        assertThat(p).isCloseTo(hPa, within(0.051));
    }

    /** The same table read the other way; half a unit of its last digit is 0.05 hPa of p, and no layer is thicker than 8.4345 km. */
    @ParameterizedTest
    @CsvSource({
        "0, 1013.25",
        "5000, 843.1",
        "10000, 696.8",
        "12500, 631.8",
        "14000, 595.2",
        "18000, 506.0",
        "30000, 300.9",
        "40000, 187.5"
    })
    void altitudeIsReadOffThePressure(double feet, double hPa) {
        Altitude altitude = StandardDay.altitude(new AbsolutePressure(hPa * 100.0));
        double halfDigit_ft = 0.051 / hPa * 8_434.5 / 0.3048;
        assertThat(altitude.toFeet()).isCloseTo(feet, within(halfDigit_ft));
    }

    @ParameterizedTest
    @CsvSource({"-300", "0", "4000", "10999", "11001", "19000"})
    void altitudeAndPressureUndoEachOther(double metres) {
        assertThat(StandardDay.altitude(StandardDay.pressure(new Altitude(metres)))
                        .metres())
                .isCloseTo(metres, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"10000, -4.81", "18000, -20.66", "36089, -56.50", "50000, -56.50"})
    void temperatureFollowsTheTable(double feet, double celsius) {
        assertThat(StandardDay.temperature(Altitude.ofFeet(feet)).toCelsius()).isCloseTo(celsius, within(0.006));
    }
}
