package org.lowfirst.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The words of papers and tables in both languages. */
final class PaperWordsTest {

    private static final Pattern PLACE = Pattern.compile("\\{[a-z]+}");

    @ParameterizedTest
    @ValueSource(strings = {"paper", "table"})
    void bothLanguagesHaveTheSameTextsWithTheSamePlaces(String folder) throws IOException {
        Properties english = words(folder, "words.properties");
        Properties german = words(folder, "words_de.properties");
        assertThat(german.stringPropertyNames()).isEqualTo(english.stringPropertyNames());
        for (String key : english.stringPropertyNames()) {
            assertThat(places(german.getProperty(key))).as(key).isEqualTo(places(english.getProperty(key)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"paper", "table"})
    void nothingIsEverCalledSafe(String folder) throws IOException {
        assertThat(words(folder, "words.properties").values())
                .allSatisfy(text -> assertThat((String) text).doesNotContainPattern("(?i)\\bsafe(ly|ty)?\\b"));
        assertThat(words(folder, "words_de.properties").values())
                .allSatisfy(text -> assertThat((String) text).doesNotContainPattern("(?i)\\bsicher(heit)?\\b"));
    }

    private static Set<String> places(String text) {
        return PLACE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Properties words(String folder, String file) throws IOException {
        Properties words = new Properties();
        try (Reader reader = Files.newBufferedReader(Path.of("src/main/resources/org/lowfirst/app", folder, file))) {
            words.load(reader);
        }
        return words;
    }
}
