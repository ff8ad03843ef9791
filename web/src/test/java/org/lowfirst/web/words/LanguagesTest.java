package org.lowfirst.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.station.Language;

/** The message files of all modules, one language against the other. */
final class LanguagesTest {

    private static final Pattern PLACE = Pattern.compile("\\{[^}]*}");

    /** "Not sure" and "nobody knows for sure" are said, but of no cylinder and no fill that it is. */
    private static final Pattern SAFE = Pattern.compile(
            "(?i)\\bsafe(ly|ty)?\\b|\\b(gefahrlos|ungefährlich|unbedenklich)\\b|(?<!nicht|weiß) sicher\\b");

    static Stream<Path> english() {
        return MessageFiles.english().stream();
    }

    private static Stream<Language> others() {
        return Stream.of(Language.values()).filter(language -> language != Language.ENGLISH);
    }

    @Test
    void theFilesOfAllModulesAreFound() {
        assertThat(english().map(Path::toString))
                .anyMatch(file -> file.contains("org/lowfirst/web/messages"))
                .anyMatch(file -> file.contains("org/lowfirst/app/bench"))
                .anyMatch(file -> file.contains("org/lowfirst/planning"))
                .anyMatch(file -> file.contains("org/lowfirst/station"));
    }

    @ParameterizedTest
    @MethodSource("english")
    void everyTextIsThereInEveryLanguage(Path english) {
        others().forEach(language -> assertThat(texts(language, english).keySet())
                .isEqualTo(MessageFiles.texts(english).keySet()));
    }

    @ParameterizedTest
    @MethodSource("english")
    void noTextIsEmptyWhereEnglishSaysSomething(Path english) {
        MessageFiles.texts(english)
                .forEach((key, text) -> others().forEach(language -> assertThat(
                                texts(language, english).getOrDefault(key, text).isBlank())
                        .as(key)
                        .isEqualTo(text.isBlank())));
    }

    @ParameterizedTest
    @MethodSource("english")
    void everyTextKeepsItsPlaces(Path english) {
        MessageFiles.texts(english)
                .forEach((key, text) -> others().forEach(language -> assertThat(
                                places(texts(language, english).getOrDefault(key, text)))
                        .as(key)
                        .isEqualTo(places(text))));
    }

    @ParameterizedTest
    @MethodSource("english")
    void noTextCallsAnythingSafe(Path english) {
        Stream.concat(Stream.of(MessageFiles.texts(english)), others().map(language -> texts(language, english)))
                .flatMap(texts -> texts.entrySet().stream())
                .forEach(
                        entry -> assertThat(entry.getValue()).as(entry.getKey()).doesNotContainPattern(SAFE));
    }

    private static Map<String, String> texts(Language language, Path english) {
        return MessageFiles.texts(MessageFiles.in(language.tag(), english));
    }

    private static Set<String> places(String text) {
        return PLACE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }
}
