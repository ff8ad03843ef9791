package org.lowfirst.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;

final class FillsLeftWordsTest {

    private static final ShownUnits ENGLISH = ShownUnits.METRIC;
    private static final ShownUnits GERMAN = ShownUnits.METRIC.in(Locale.GERMAN);

    @Test
    void theNextFillIsCountedInItsLanguage() {
        assertThat(left(7).inWords(ENGLISH)).isEqualTo("7, and an 8th to about 147 bar");
        assertThat(left(7).inWords(GERMAN)).isEqualTo("7, und eine 8. bis etwa 147 bar");
        assertThat(FillsLeftWords.ordinal(11, Locale.GERMANY)).isEqualTo("eine 11.");
    }

    @Test
    void englishPlacesHaveTheirEndings() {
        assertThat(FillsLeftWords.ordinal(1, Locale.ENGLISH)).isEqualTo("a 1st");
        assertThat(FillsLeftWords.ordinal(11, Locale.ENGLISH)).isEqualTo("an 11th");
        assertThat(FillsLeftWords.ordinal(22, Locale.ENGLISH)).isEqualTo("a 22nd");
        assertThat(FillsLeftWords.ordinal(83, Locale.ENGLISH)).isEqualTo("an 83rd");
    }

    @Test
    void noFillAndNoNeedAreSaidInGermanToo() {
        assertThat(left(0).inWords(GERMAN)).isEqualTo("keine; die nächste käme bis etwa 147 bar");
        assertThat(FillsLeft.NOT_COUNTED.inWords(GERMAN)).isEqualTo("keine nötig");
        assertThat(new FillsLeft(FillsLeft.MOST, null).inWords(GERMAN)).isEqualTo("9999 oder mehr");
    }

    private static FillsLeft left(int complete) {
        return new FillsLeft(complete, GaugePressure.of(147.0, PressureUnit.BAR));
    }
}
