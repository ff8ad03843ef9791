package org.lowfirst.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The worked examples of RFC 8785, from memory; its numbers are left out, because the journal has whole numbers only. */
class CanonicalJsonReferenceTest {

    /** RFC 8785 section 3.2.2: the string and the literals of the sample input. */
    @Test
    void theSampleOfSection322() {
        String string = "\u20ac$\u000F\nA'B\"\\\\\"/";
        Map<String, Object> sample = Map.of("string", string, "literals", Arrays.asList(null, true, false));
        assertThat(CanonicalJson.write(sample))
                .isEqualTo("{\"literals\":[null,true,false],\"string\":\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
    }

    /** RFC 8785 section 3.2.3: members are sorted by UTF-16 code units. */
    @Test
    void theSortedNamesOfSection323() {
        Map<String, String> sample = Map.of(
                "\u20ac", "Euro Sign",
                "\r", "Carriage Return",
                "\ufb33", "Hebrew Letter Dalet With Dagesh",
                "1", "One",
                "\ud83d\ude00", "Emoji: Grinning Face",
                "\u0080", "Control",
                "\u00f6", "Latin Small Letter O With Diaeresis");
        assertThat(CanonicalJson.write(sample))
                .containsSubsequence(
                        "Carriage Return",
                        "One",
                        "Control",
                        "Latin Small Letter O With Diaeresis",
                        "Euro Sign",
                        "Emoji: Grinning Face",
                        "Hebrew Letter Dalet With Dagesh");
    }

    /** RFC 8785 section 3.2.2.2: the seven short escapes, and \\u00xx in lower case for the rest below U+0020. */
    @Test
    void controlCharactersAreEscapedInOneWay() {
        assertThat(CanonicalJson.write("\b\t\n\f\r\"\\\u0001\u001f\u007f/"))
                .isEqualTo("\"\\b\\t\\n\\f\\r\\\"\\\\\\u0001\\u001f\u007f/\"");
    }

    /** RFC 8785 section 3.2.2.2: a lone surrogate is an error. */
    @Test
    void halfACharacterIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> CanonicalJson.write("x\ud83d"));
        assertThatIllegalArgumentException().isThrownBy(() -> CanonicalJson.write("\ude00x"));
    }

    /** RFC 7493 section 2.2: whole numbers beyond 2^53 - 1 are not kept exactly by every reader. */
    @Test
    void onlyExactWholeNumbersAreWritten() {
        assertThat(CanonicalJson.write(List.of(0L, -7L, CanonicalJson.LARGEST))).isEqualTo("[0,-7,9007199254740991]");
        assertThatIllegalArgumentException().isThrownBy(() -> CanonicalJson.write(CanonicalJson.LARGEST + 1));
        assertThatIllegalArgumentException().isThrownBy(() -> CanonicalJson.write(1.5));
    }

    @Test
    void whatIsWrittenIsReadBackTheSame() {
        String text = "{\"a\":[1,\"\u00f6\",{\"b\":true}],\"c\":null}";
        assertThat(CanonicalJson.write(JsonText.parseObject(text))).isEqualTo(text);
    }
}
