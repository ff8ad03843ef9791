package org.lowfirst.web.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Contrast by the formula of WCAG 2.2, "contrast ratio" and "relative luminance". */
final class StylesheetTest {

    private static final Map<String, String> COLOURS = new HashMap<>();

    @BeforeAll
    static void read() throws IOException {
        Matcher token = Pattern.compile("--([a-z-]+):\\s*(#[0-9a-f]{3,6})")
                .matcher(Files.readString(Path.of("src/main/resources/static/lowfirst.css")));
        while (token.find()) {
            COLOURS.put(token.group(1), token.group(2));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "ink, paper", "ink, card", "ink, know", "ink, stop-pale", "ink, act-pale", "soft, paper", "soft, card",
        "act, paper", "act, card", "act, act-pale", "stop, card", "stop, paper", "stop, stop-pale", "card, act",
        "card, act-deep", "card, ink", "card, stop"
    })
    void textHasAContrastOfSevenAtLeast(String text, String ground) {
        assertThat(contrast(text, ground)).isGreaterThanOrEqualTo(7.0);
    }

    @ParameterizedTest
    @CsvSource({"ink, paper", "ink, card"})
    void pressuresHaveAContrastOfTwelveAtLeast(String text, String ground) {
        assertThat(contrast(text, ground)).isGreaterThanOrEqualTo(12.0);
    }

    @ParameterizedTest
    @CsvSource({"edge, card", "edge, paper", "stop-edge, card", "act, card", "know-edge, paper"})
    void edgesThatMeanSomethingHaveAContrastOfThreeAtLeast(String edge, String ground) {
        assertThat(contrast(edge, ground)).isGreaterThanOrEqualTo(3.0);
    }

    @Test
    void theFormulaGivesTwentyOneForBlackOnWhite() {
        COLOURS.put("black", "#000000");
        COLOURS.put("white", "#ffffff");
        assertThat(contrast("black", "white")).isEqualTo(21.0);
    }

    private static double contrast(String one, String other) {
        double a = luminance(Objects.requireNonNull(COLOURS.get(one), one));
        double b = luminance(Objects.requireNonNull(COLOURS.get(other), other));
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        String six =
                colour.length() == 7 ? colour.substring(1) : colour.substring(1).replaceAll("(.)", "$1$1");
        double[] linear = new double[3];
        for (int i = 0; i < 3; i++) {
            double c = Integer.parseInt(six.substring(2 * i, 2 * i + 2), 16) / 255.0;
            linear[i] = c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
    }
}
