package org.lowfirst.app.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.Problem;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.SourceText;

/** Reading a flight recorder's file. The layout of a B record is from memory of the specification; the tracks are invented. */
final class IgcTrackTest {

    private final Problems problems = new Problems();

    /** The B record of the specification's own example, from memory: 16:02:40, pressure altitude 280 m, GNSS altitude 421 m. */
    @Test
    void theExampleOfTheSpecificationIsRead() {
        Track track = read("B1602405407121N00249342WA002800042120509950", fix(16 * 3600 + 2 * 60 + 45, 281, 422));
        assertThat(track.fixes().get(0)).isEqualTo(new Fix(57_760.0, 280.0, new Place(1, 26, 5)));
        assertThat(track.notes()).isEmpty();
    }

    @Test
    void otherRecordsAreLeftAlone() {
        Track track = read(
                "AXXX", "HFDTE140626", "LXXXB not a fix", fix(0, 100, 150), "E000000PEV", fix(10, 110, 160), "G1234");
        assertThat(track.fixes()).extracting(Fix::metres).containsExactly(100.0, 110.0);
    }

    @Test
    void timeRunsOnOverMidnight() {
        Track track = read(fix(86_390, 500, 550), fix(10, 520, 570), fix(20, 530, 580));
        assertThat(track.fixes()).extracting(Fix::seconds).containsExactly(86_390.0, 86_410.0, 86_420.0);
    }

    @Test
    void twoFixesInOneSecondCountOnce() {
        Track track = read(fix(0, 500, 550), fix(10, 520, 570), fix(10, 521, 571), fix(20, 530, 580));
        assertThat(track.fixes()).extracting(Fix::metres).containsExactly(500.0, 520.0, 530.0);
    }

    @Test
    void aMissingPressureAltitudeIsTakenFromTheSatellitesShiftedToFit() {
        Track track = read(fix(0, 2000, 2100), fix(10, 0, 2112), fix(20, 0, 2130), fix(30, 2040, 2150));
        assertThat(track.fixes()).extracting(Fix::metres).containsExactly(2000.0, 2012.0, 2020.0, 2040.0);
        assertThat(track.notes())
                .singleElement()
                .asString()
                .startsWith("2 fixes have no pressure altitude (0); the GNSS");
    }

    @Test
    void withoutAnyPressureAltitudeTheSatellitesStandInAndItIsSaid() {
        Track track = read(fix(0, 0, 2100), fix(10, 0, 2112));
        assertThat(track.fixes()).extracting(Fix::metres).containsExactly(2100.0, 2112.0);
        assertThat(track.notes()).singleElement().asString().contains("No fix has a pressure altitude");
    }

    @Test
    void zeroNearSeaLevelIsAnAltitude() {
        Track track = read(fix(0, 3, 160), fix(10, 0, 150), fix(20, -12, 140), fix(30, 0, 151));
        assertThat(track.fixes()).extracting(Fix::metres).containsExactly(3.0, 0.0, -12.0, 0.0);
        assertThat(track.notes()).isEmpty();
    }

    @Test
    void aFixWithNeitherAltitudeIsLeftOutAndCounted() {
        String lost = fix(10, 0, 0).replace('A', 'V');
        Track track = read(fix(0, 2000, 2100), lost, fix(20, 2010, 2110));
        assertThat(track.fixes()).hasSize(2);
        assertThat(track.notes()).containsExactly("1 fix has no altitude at all and is left out.");
    }

    @Test
    void aHoleInTheTrackIsSaid() {
        Track track = read(fix(0, 2000, 2100), fix(60, 2000, 2100), fix(600, 2000, 2100));
        assertThat(track.notes())
                .containsExactly(
                        "The track has no fix from 0:01 to 0:10; the altitude is taken to change evenly there.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "B0000204700000N03000000WA0200|2:1|has 29 characters; 35",
                "B0060204700000N03000000WA0200002100|2:2|The time cannot be read",
                "B0000204700000N03000000WX0200002100|2:25|The validity of the fix cannot be read",
                "B0000204700000N03000000WA020O002100|2:26|The pressure altitude cannot be read",
                "B0000204700000N03000000WA020002-100|2:31|GNSS altitude",
                "B0000054700000N03000000WA0200002100|2:2|goes back by 5 s",
                "B0000204700000N03000000WA0900009100|2:26|jumps from 2,000 m (6,562 ft) to 9,000 m (29,528 ft) in 10 s; 75 m/s",
                "B0000204700000N03000000WA2500025100|2:26|(25,000 m (82,021 ft)) must be -500 m (-1,640 ft) to 20,000 m"
            })
    void aWrongLineIsShownInItsPlace(String line, String place, String words) {
        assertThat(tryToRead(fix(10, 2000, 2100), line, fix(40, 2000, 2100))).isEmpty();
        Problem problem = problems.inOrder().get(0);
        assertThat(problem.sentence()).contains(words);
        assertThat(where(problem.place())).isEqualTo(place);
        assertThat(problems.count()).isEqualTo(1);
    }

    @Test
    void aShiftThatStaysIsTwoJumps() {
        assertThat(tryToRead(
                        fix(0, 2000, 2100),
                        fix(10, 8000, 2100),
                        fix(20, 8001, 2100),
                        fix(30, 2001, 2100),
                        fix(40, 2002, 1)))
                .isEmpty();
        assertThat(problems.inOrder())
                .extracting(problem -> where(problem.place()))
                .containsExactly("2:26", "4:26");
    }

    @Test
    void aFileWithoutFixesIsRefused() {
        assertThat(tryToRead("AXXX", "HFDTE140626")).isEmpty();
        assertThat(problems.inOrder().get(0).sentence()).contains("no line starts with B");
    }

    @Test
    void oneFixIsNoTrack() {
        assertThat(tryToRead(fix(0, 2000, 2100))).isEmpty();
        assertThat(problems.inOrder().get(0).sentence()).contains("one fix", "two are the least");
    }

    private static String where(@Nullable Place place) {
        return place == null ? "nowhere" : place.line() + ":" + place.column();
    }

    private Track read(String... lines) {
        Optional<Track> track = tryToRead(lines);
        assertThat(problems.inOrder()).isEmpty();
        return track.orElseThrow();
    }

    private Optional<Track> tryToRead(String... lines) {
        return IgcTrack.read(new SourceText("x.igc", String.join("\r\n", List.of(lines)) + "\r\n"), problems);
    }

    private static String fix(int clock_s, int pressure_m, int gnss_m) {
        return String.format(
                Locale.ROOT,
                "B%02d%02d%02d4700000N03000000WA%s%s",
                clock_s / 3600,
                clock_s / 60 % 60,
                clock_s % 60,
                height(pressure_m),
                height(gnss_m));
    }

    private static String height(int metres) {
        return metres < 0 ? String.format(Locale.ROOT, "-%04d", -metres) : String.format(Locale.ROOT, "%05d", metres);
    }
}
