package org.lowfirst.station.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.station.charges.Booking;
import org.lowfirst.station.charges.ChargeLine;
import org.lowfirst.station.charges.RentFinding;
import org.lowfirst.station.due.DueKind;
import org.lowfirst.station.readiness.Place;
import org.lowfirst.station.readiness.ShiftState;
import org.lowfirst.station.stamp.Ambiguity;
import org.lowfirst.station.stamp.Meaning;

/** Every code that people see has words in both languages, and no words are left over. */
class WordsTest {

    static Stream<Map.Entry<String, Set<String>>> packages() {
        return Map.of(
                "rules",
                keys(List.of(
                        codes("advice", Advice.values()),
                        codes("override", OverrideOutcome.Problem.values()),
                        codes("status", RuleStatus.values()),
                        codes("change", BookChange.Problem.values()),
                        codes("marking", MarkingPart.values()),
                        Stream.of(BuiltInBooks.us(), BuiltInBooks.eu())
                                .flatMap(book -> book.questions(Cylinders.TODAY).stream())
                                .map(question -> "question." + question))),
                "stamp",
                keys(List.of(
                        codes("ambiguity", Ambiguity.Kind.values()),
                        Arrays.stream(Meaning.class.getPermittedSubclasses())
                                .map(type -> "meaning." + hyphened(type.getSimpleName())))),
                "charges",
                keys(List.of(
                        codes("line", ChargeLine.Kind.values()),
                        codes("booking", Booking.Problem.values()),
                        codes("rent", RentFinding.Problem.values()))),
                "due",
                keys(List.of(codes("due", DueKind.values()))),
                "readiness",
                keys(List.of(codes("shift", ShiftState.values()), codes("place", Place.values()))))
                .entrySet()
                .stream();
    }

    private static Set<String> keys(List<Stream<String>> parts) {
        return parts.stream().flatMap(part -> part).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stream<String> codes(String group, Enum<?>[] values) {
        return Arrays.stream(values).map(value -> group + "." + RuleSettings.word(value));
    }

    private static String hyphened(String typeName) {
        return typeName.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }

    private static Properties words(String part, String language) throws IOException {
        String file = "/org/lowfirst/station/" + part + "/words" + language + ".properties";
        Properties words = new Properties();
        try (InputStream stream = WordsTest.class.getResourceAsStream(file)) {
            words.load(new InputStreamReader(Objects.requireNonNull(stream, file), StandardCharsets.UTF_8));
        }
        return words;
    }

    @ParameterizedTest
    @MethodSource("packages")
    void everyCodeHasWordsInBothLanguagesAndNoneAreLeftOver(Map.Entry<String, Set<String>> part) throws IOException {
        for (String language : List.of("", "_de")) {
            assertThat(new TreeSet<>(words(part.getKey(), language).stringPropertyNames()))
                    .isEqualTo(part.getValue());
        }
    }

    @ParameterizedTest
    @MethodSource("packages")
    void bothLanguagesFillInTheSameValues(Map.Entry<String, Set<String>> part) throws IOException {
        Properties english = words(part.getKey(), "");
        Properties german = words(part.getKey(), "_de");
        for (String key : part.getValue()) {
            assertThat(holes(german.getProperty(key))).as(key).isEqualTo(holes(english.getProperty(key)));
        }
    }

    private static Set<String> holes(String text) {
        Set<String> holes = new TreeSet<>();
        for (int i = 0; i < 3; i++) {
            if (text.contains("{" + i + "}")) {
                holes.add("{" + i + "}");
            }
        }
        assertThat(text.replaceAll("\\{[0-2]}", "")).doesNotContain("{", "}");
        return holes;
    }

    @Test
    void noSentenceCallsAThingSafe() throws IOException {
        for (Map.Entry<String, Set<String>> part : packages().toList()) {
            assertThat(words(part.getKey(), "").values().toString().toLowerCase(Locale.ROOT))
                    .doesNotContainPattern("\\bsafe\\b");
            assertThat(words(part.getKey(), "_de").values().toString().toLowerCase(Locale.ROOT))
                    .doesNotContainPattern("\\b(gefahrlos|ungefährlich)\\b");
        }
    }
}
