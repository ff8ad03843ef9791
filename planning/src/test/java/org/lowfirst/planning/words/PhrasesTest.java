package org.lowfirst.planning.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import org.junit.jupiter.api.Test;

final class PhrasesTest {

    private final Phrases phrases = Phrases.in(Locale.ENGLISH);

    @Test
    void valuesAreFilledInByName() {
        assertThat(phrases.text("fills-left", Map.of("complete", "7", "next", "an 8th", "reading", "147 bar")))
                .isEqualTo("7, and an 8th to about 147 bar");
    }

    @Test
    void aValueThatIsNotGivenIsAnError() {
        assertThatThrownBy(() -> phrases.text("fills-left.none", Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("reading");
        assertThatThrownBy(() -> phrases.text("no.such", Map.of())).isInstanceOf(MissingResourceException.class);
    }

    @Test
    void whatWasMeasuredKeepsTheNameOfItsCylinder() {
        assertThat(phrases.noun("reading of supply A of bench 2")).isEqualTo("reading of supply A of bench 2");
        assertThat(phrases.noun("water volume of bottle M-03")).isEqualTo("water volume of bottle M-03");
        assertThat(phrases.noun("something new")).isEqualTo("something new");
    }

    @Test
    void aLanguageThatIsNotThereFallsBackToEnglish() {
        assertThat(Phrases.in(Locale.JAPANESE).text("fills-left.not-needed", Map.of()))
                .isEqualTo("none needed");
    }
}
