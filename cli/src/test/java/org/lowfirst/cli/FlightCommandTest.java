package org.lowfirst.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** What a person and a program see of {@code lowfirst flight}. */
final class FlightCommandTest {

    private static final String WAVE = "../examples/flight-wave.yaml";
    private static final String TRACK = "../examples/flight-track.yaml";
    private static final String SHORT = "src/test/resources/flights/not-covered.yaml";

    @Test
    void aFlightThatIsCoveredSaysSoAndByHowMuch() {
        CommandRun run = CommandRun.of("flight", WAVE);
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        assertThat(run.out()).startsWith("""
                FLIGHT OXYGEN for 2:57 h, up to 16,500 ft. Front seat (crew), Back seat
                (passenger). Bottles at -5 C.

                  COVERED: the bottles give 368 L, flight, margin and reserve need 359 L.

                  leg                        h:mm      at ft    litres      left
                  (start)                    0:00      1,200                 368
                  tow                        0:12      5,000       0.0       368
                  climb in wave              0:57     16,500        47       320
                  along the ridge            2:17     16,500       176       144
                  way home                   2:57      1,200        32       113
                  flight                                           255
                  margin, 15 %                                      38
                  reserve, 30 min at 2.2 L/min                      66
                  needed                                           359
                """);
        assertThat(run.out()).contains("To cover the flight it must read at least 162 bar at -5 C.");
        assertThat(run.out()).contains("  0:47 to 2:24   Front seat: use oxygen. Crew above 14,000 ft. 14 CFR");
    }

    /** 2 L and 2 L at 50 and 150 bar against 1 L/min for 500 min: the lower one takes what is missing. */
    @Test
    void ofTwoBottlesTheLowerIsFilled() {
        String text = """
                temperature: 15 C
                rules: eu-nco
                reserve: 0 min
                margin: 0 %
                descent: 500 ft/min
                people:
                  - {name: P1, role: crew, flow: {constant: 1 L/min}, from: 0 ft}
                legs:
                  - {name: level, time: 500 min, from: 9000 ft, to: 9000 ft}
                bottles:
                  - {name: low, water_volume: 2 L, reading: 50 bar, service_pressure: 200 bar, keep: 0 bar}
                  - {name: high, water_volume: 2 L, reading: 150 bar, service_pressure: 200 bar, keep: 0 bar}
                """;
        CommandRun run = CommandRun.piped(text, "flight", "-");
        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("From what they read now: fill low to at least", "one that is not named stays as it is")
                .contains("for when the pilot in command cannot judge");
        JsonNode bottles =
                CommandRun.piped(text, "flight", "--json", "-").json().get("bottles");
        double low = bottles.get(0).get("fill_to").get("bar").asDouble();
        assertThat(bottles.get(1).get("fill_to").isNull()).isTrue();
        String filled = text.replace("reading: 50 bar", "reading: " + (low + 0.001) + " bar");
        assertThat(CommandRun.piped(filled, "flight", "-").exit()).isZero();
        String less = text.replace("reading: 50 bar", "reading: " + (low - 0.01) + " bar");
        assertThat(CommandRun.piped(less, "flight", "-").exit()).isEqualTo(3);
    }

    @Test
    void aFlightThatIsNotCoveredEndsWithThree() {
        CommandRun run = CommandRun.of("flight", SHORT);
        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out())
                .contains("NOT COVERED, 973 L short")
                .contains("GAP: 14 CFR 135.89(a)(1) asks Left to use oxygen from 2:33 to 2:39, 2:41 to")
                .contains("1:57  last moment to start down at 1,000 ft/min with the reserve whole")
                .contains("1:59  the reserve is touched")
                .contains("2:58  the bottles are down to what is to stay in them")
                .contains("Not even full bottles cover the flight.")
                .contains("Bottle X2 reads more than a full one.");
        assertThat(run.out().indexOf("NOT COVERED")).isLessThan(run.out().indexOf("leg "));
    }

    @Test
    void jsonCarriesTheSameWithAllDigits() {
        JsonNode flight = CommandRun.of("flight", SHORT, "--json").json();
        assertThat(flight.get("covered").asBoolean()).isFalse();
        double needed = flight.get("used_litres").asDouble()
                + flight.get("margin_litres").asDouble()
                + flight.get("reserve_litres").asDouble();
        assertThat(flight.get("needed_litres").asDouble()).isCloseTo(needed, within(1e-9));
        assertThat(flight.get("short_litres").asDouble())
                .isCloseTo(needed - flight.get("usable_litres").asDouble(), within(1e-9));
        assertThat(flight.get("reading_needed").isNull()).isTrue();
        assertThat(flight.get("gaps")).hasSize(3);
        assertThat(flight.get("people").get(0).get("from_ft").asDouble()).isEqualTo(11_500.0);
        assertThat(flight.get("needs").get(0).get("up_to_ft").asDouble()).isEqualTo(12_000.0);
    }

    @Test
    void aTrackBesideTheFileIsFlown() {
        CommandRun run = CommandRun.of("flight", TRACK);
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        assertThat(run.out())
                .contains("0:00 to 0:30", "2:00 to 2:20", "at m")
                .contains("The track has 421 fixes;")
                .contains("3 fixes have no pressure altitude (0); the GNSS altitude stands in")
                .contains("above 10,000 ft (3,048 m) to 13,000 ft", "quotation of the text read");
    }

    @Test
    void aPipedFileFindsItsTrackInTheFolderItIsRunIn(@TempDir Path folder) throws IOException {
        Path track = Files.copy(Path.of("../examples/flight.igc"), folder.resolve("copy.IGC"));
        String text = Files.readString(Path.of(TRACK)).replace("flight.igc", track.toString());
        CommandRun piped = CommandRun.piped(text, "flight", "-");
        assertThat(piped.exit()).isZero();
        assertThat(piped.out()).isEqualTo(CommandRun.of("flight", TRACK).out());
    }

    @Test
    void theSameTrackAsATableGivesTheSameFlight(@TempDir Path folder) throws IOException {
        StringBuilder table = new StringBuilder("time_s,altitude_m\n");
        double start = Double.NaN;
        for (String line : Files.readAllLines(Path.of("../examples/flight.igc"))) {
            if (line.startsWith("B") && !line.startsWith("00000", 25)) {
                double clock = 3_600.0 * Integer.parseInt(line.substring(1, 3))
                        + 60.0 * Integer.parseInt(line.substring(3, 5))
                        + Integer.parseInt(line.substring(5, 7));
                start = Double.isNaN(start) ? clock : start;
                double seconds = clock < start ? clock + 86_400.0 : clock;
                table.append(seconds)
                        .append(',')
                        .append(Integer.parseInt(line.substring(25, 30)))
                        .append('\n');
            }
        }
        Files.writeString(folder.resolve("flight.csv"), table);
        Path file = folder.resolve("flight.yaml");
        Files.writeString(file, Files.readString(Path.of(TRACK)).replace("flight.igc", "flight.csv"));
        double fromTable = CommandRun.of("flight", file.toString(), "--json")
                .json()
                .get("used_litres")
                .asDouble();
        double fromRecorder = CommandRun.of("flight", TRACK, "--json")
                .json()
                .get("used_litres")
                .asDouble();
        assertThat(fromTable).isCloseTo(fromRecorder, within(0.005 * fromRecorder));
    }

    @Test
    void anUnknownKeyIsAWarningAndTheFlightIsWorkedOut() throws IOException {
        String text = Files.readString(Path.of(WAVE)) + "colour: red\n";
        CommandRun run = CommandRun.piped(text, "flight", "-");
        assertThat(run.exit()).isZero();
        assertThat(run.err()).contains("warning: The key \"colour\" of the flight file is not known");
        assertThat(run.out()).contains("COVERED");
    }

    @ParameterizedTest
    @ValueSource(strings = {WAVE, TRACK, SHORT})
    void everySheetFitsEightyColumnsAndPromisesNothing(String file) {
        String sheet = CommandRun.of("flight", file).out();
        assertThat(sheet.lines()).allMatch(line -> line.length() <= 80);
        assertThat(sheet).contains("What this sheet does not know", "in command reads it");
        assertThat(sheet.lines()).noneMatch(line -> line.matches("(?i).*\\b(safe|safely|fine|enough|ok)\\b.*"));
    }

    @ParameterizedTest
    @ValueSource(strings = {WAVE, TRACK, SHORT})
    void everyResultFitsTheSchema(String file) throws IOException {
        PublishedSchema schema = PublishedSchema.of("flight-result.schema.json");
        String json = CommandRun.of("flight", file, "--json").out();
        assertThat(schema.faults(json)).isEmpty();
        assertThat(schema.faults(json.replace("\"covered\":", "\"fine\":"))).isNotEmpty();
        assertThat(schema.faults(json.replace("\"duty\":\"use\"", "\"duty\":\"may\"")))
                .isNotEmpty();
    }

    @Test
    void helpTellsTheExitCodes() {
        CommandRun run = CommandRun.of("flight", "--help");
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("Exit codes: 0", "; 3 ", "; 2 ");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void aFileThatIsNotThereEndsWithTwo() {
        assertThat(CommandRun.of("flight", "nowhere.yaml").exit()).isEqualTo(2);
        assertThat(CommandRun.of("flight").exit()).isEqualTo(2);
    }
}
