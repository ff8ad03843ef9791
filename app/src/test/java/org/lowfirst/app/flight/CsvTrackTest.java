package org.lowfirst.app.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.SourceText;

final class CsvTrackTest {

    private final Problems problems = new Problems();

    @Test
    void feetAndMetresAreRead() {
        Track feet = read("time_s,altitude_ft,x\n10,1000,a\n70.5,1200,b\n").orElseThrow();
        assertThat(feet.fixes().get(1).metres()).isCloseTo(365.76, within(1e-9));
        assertThat(feet.fixes().get(1).seconds()).isEqualTo(70.5);
        Track metres = read("altitude_m,time_s\n300,0\n310,10\n").orElseThrow();
        assertThat(metres.fixes().get(0).metres()).isEqualTo(300.0);
        assertThat(metres.notes()).containsExactly("Altitudes of the track are taken as pressure altitudes.");
    }

    /** 843.1 hPa is 5,000 ft, 595.2 hPa 14,000 ft (ICAO standard atmosphere, table to one decimal). */
    @Test
    void pressuresBecomeAltitudesOfTheStandardDay() {
        Track track = read("time_s,pressure_hPa\n0,843.1\n600,595.2\n").orElseThrow();
        assertThat(track.fixes().get(0).metres() / 0.3048).isCloseTo(5_000, within(3.0));
        assertThat(track.fixes().get(1).metres() / 0.3048).isCloseTo(14_000, within(3.0));
        assertThat(track.notes().get(0)).contains("ICAO standard atmosphere");
        assertThat(read("time_s,pressure_hPa\n0,84310\n600,59520\n")).isEmpty();
        assertThat(problems.inOrder().get(0).sentence()).contains("pressure_hPa (84,310 hPa) must be 55 to 1,075 hPa");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "time_s,height|no column altitude_m or altitude_ft",
                "time,altitude_m|no column time_s. Maybe",
                "time_s,altitude_m,altitude_ft|both altitude_m and altitude_ft",
                "time_s;altitude_m|set apart by semicolons; commas are needed"
            })
    void columnsAreAskedFor(String header, String words) {
        assertThat(read(header + "\n0,1,2\n")).isEmpty();
        assertThat(problems.inOrder().get(0).sentence()).contains(words);
    }

    @Test
    void timeMustRiseAndAltitudeMustBeFlown() {
        assertThat(read("time_s,altitude_m\n0,300\n10,310\n10,311\n20,4000\n30,330\n"))
                .isEmpty();
        assertThat(problems.inOrder())
                .extracting(problem -> problem.sentence())
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("time_s (10 s) must be after"),
                        second -> assertThat(second)
                                .startsWith("The altitude jumps from 310 m (1,017 ft) to 4,000 m (13,123 ft) in 10 s"));
    }

    private Optional<Track> read(String text) {
        return CsvTrack.read(new SourceText("x.csv", text), problems);
    }
}
