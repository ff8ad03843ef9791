package org.lowfirst.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lowfirst.app.bench.Caution;
import org.lowfirst.app.bench.Phase;
import org.lowfirst.planning.SkipReason;
import org.lowfirst.station.Rule;
import org.lowfirst.station.VolumeBasis;
import org.lowfirst.web.hub.Hub;
import org.lowfirst.web.view.Section;
import org.lowfirst.web.view.Trouble;

final class WordsTest {

    /** A key given whole, as in {@code words.of("bank.title")}, counted or as part of a choice. */
    private static final Pattern KEY = Pattern.compile("\"([a-z][a-z-]*(?:\\.[a-z_-]+)+)\"");

    private static final Pattern PLACE = Pattern.compile("\\{([^}]*)}");

    private final Words words = Words.in(Locale.ENGLISH);

    @Test
    void valuesAreFilledInByPlace() {
        assertThat(words.of("plan.short", "150 bar", "124 bar", "26 bar"))
                .isEqualTo("Wanted 150 bar; the bank brings it to 124 bar, 26 bar short.");
    }

    @Test
    void oneAndManyHaveTheirOwnTexts() {
        assertThat(words.count("start.entries", 1)).isEqualTo("1 entry");
        assertThat(words.count("start.entries", 12)).isEqualTo("12 entries");
    }

    @Test
    void aLanguageThatIsNotThereFallsBackToEnglish() {
        assertThat(Words.in(Locale.JAPANESE).of("section.bank")).isEqualTo("Bank");
        assertThat(Words.in(Locale.JAPANESE).language()).isEqualTo("en");
    }

    @ParameterizedTest
    @EnumSource(Rule.class)
    void everyRuleHasWords(Rule rule) {
        assertThat(words.has("rule." + key(rule))).isTrue();
    }

    @ParameterizedTest
    @EnumSource(Caution.class)
    void everyCautionHasWords(Caution caution) {
        assertThat(words.has("caution." + key(caution))).isTrue();
    }

    @ParameterizedTest
    @EnumSource(Phase.class)
    void everyPhaseSaysWhatToDoAndWhatComesOfIt(Phase phase) {
        for (String part : List.of(".todo", ".then", ".done")) {
            assertThat(words.has("phase." + key(phase) + part)).isTrue();
        }
    }

    @Test
    void everyOtherNamedThingHasWords() {
        assertThat(Arrays.stream(Section.values()).map(Section::key)).allMatch(words::has);
        assertThat(Arrays.stream(Hub.values()).map(Hub::key))
                .allMatch(key -> words.has(key) && words.has(key + ".what"));
        assertThat(Arrays.stream(SkipReason.values()).map(reason -> "skip." + key(reason)))
                .allMatch(words::has);
        assertThat(Arrays.stream(VolumeBasis.values()).map(basis -> "basis." + key(basis)))
                .allMatch(words::has);
        for (Trouble trouble : Trouble.values()) {
            for (String part : List.of(".title", ".what", ".todo")) {
                assertThat(words.has("trouble." + key(trouble) + part)).isTrue();
            }
        }
    }

    @Test
    void everyKeyThatPagesAskForIsThere() throws IOException {
        Set<String> missing = askedFor().stream()
                .filter(key -> !words.has(key) && !words.has(key + ".one"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(missing).isEmpty();
    }

    @Test
    void everyTextUsesItsPlacesFromZeroOnAndNothingElseInBraces() {
        ResourceBundle bundle = ResourceBundle.getBundle("org.lowfirst.web.messages", Locale.ROOT);
        Enumeration<String> keys = bundle.getKeys();
        while (keys.hasMoreElements()) {
            String key = keys.nextElement();
            Matcher places = PLACE.matcher(bundle.getString(key));
            while (places.find()) {
                assertThat(places.group(1)).as(key).matches("[0-4]");
            }
        }
    }

    @Test
    void nothingIsEverCalledSafe() {
        ResourceBundle bundle = ResourceBundle.getBundle("org.lowfirst.web.messages", Locale.ROOT);
        assertThat(bundle.keySet())
                .allSatisfy(key -> assertThat(bundle.getString(key)).doesNotContainPattern("(?i)\\bsafe(ly|ty)?\\b"));
    }

    private static Set<String> askedFor() throws IOException {
        Set<String> keys = new TreeSet<>();
        for (String folder : List.of("src/main/jte", "src/main/java/org/lowfirst/web")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    keys.addAll(keysIn(file));
                }
            }
        }
        return keys;
    }

    private static Set<String> keysIn(Path file) throws IOException {
        Set<String> keys = new TreeSet<>();
        Files.readString(file)
                .lines()
                .filter(line -> line.contains("of(") || line.contains("count(") || line.contains("fault"))
                .forEach(line -> {
                    Matcher key = KEY.matcher(line);
                    while (key.find()) {
                        keys.add(key.group(1));
                    }
                });
        return keys;
    }

    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
