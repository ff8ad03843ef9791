package org.lowfirst.app.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.app.file.Asked;

/** Problems and notes of an uploaded track, in German. The tracks are invented. */
final class TrackLanguageTest {

    private static final Pattern FILLED_IN = Pattern.compile("\\{[a-z]+}");

    @Test
    void everySentenceHasAGermanOneThatFillsTheSameIn() {
        ResourceBundle english = words(Locale.ROOT);
        ResourceBundle german = words(Locale.GERMAN);
        assertThat(german.keySet()).isEqualTo(english.keySet());
        for (String key : english.keySet()) {
            assertThat(german.getString(key)).as(key).isNotEqualTo(english.getString(key));
            assertThat(FILLED_IN.matcher(german.getString(key)).results().map(part -> part.group()))
                    .as(key)
                    .containsExactlyInAnyOrderElementsOf(FILLED_IN
                            .matcher(english.getString(key))
                            .results()
                            .map(part -> part.group())
                            .toList());
        }
    }

    private static ResourceBundle words(Locale locale) {
        return ResourceBundle.getBundle(
                "org.lowfirst.app.file.words",
                locale,
                TrackLanguageTest.class.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    @Test
    void notesOfARecordersFileAreGerman() {
        Asked<FlownTrack> asked =
                read("x.igc", "B0000004700000N03000000WA0000002100\nB0000204700000N03000000WA0000002112");
        assertThat(((Asked.Answered<FlownTrack>) asked).answer().notes())
                .singleElement()
                .asString()
                .startsWith("Kein Punkt hat eine Druckhöhe");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "x.igc|B0000|Dieser B-Satz hat 5 Zeichen; 35 fassen",
                "x.igc|A|keine Zeile beginnt mit B",
                "x.igc|B0000004700000N03000000WA0200002100;B0000104700000N03000000WA0900009100|springt in 10 s von 2.000 m (6.562 ft) auf 9.000 m",
                "x.csv|time_s,altitude|Es gibt keine Spalte altitude_m",
                "x.csv|time_s,altitude_m;0,high|altitude_m (high) ist keine Zahl",
                "x.csv|time_s,altitude_m;0|Die Zeile hat 1 Zelle, der Kopf hat 2 Zellen",
                "x.csv|time_s,pressure_hPa;0,30.5|pressure_hPa (30,5 hPa) muss 55 bis 1.075 hPa sein"
            })
    void whatIsWrongWithATrackIsSaidInGerman(String name, String lines, String sentence) {
        Asked<FlownTrack> asked = read(name, lines.replace(';', '\n'));
        assertThat(((Asked.Refused<FlownTrack>) asked).problems().get(0).sentence())
                .contains(sentence);
    }

    private static Asked<FlownTrack> read(String name, String text) {
        return ReadingATrack.read(name, text.getBytes(StandardCharsets.UTF_8), Locale.GERMAN);
    }
}
