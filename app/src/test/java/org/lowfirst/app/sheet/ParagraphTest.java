package org.lowfirst.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class ParagraphTest {

    @Test
    void linesEndBeforeColumnEightyOneAndAreIndented() {
        String text = Paragraph.of("  - ", "word ".repeat(40));
        assertThat(text.lines()).hasSize(3).allMatch(line -> line.length() <= 80);
        assertThat(text.lines().skip(1)).allMatch(line -> line.startsWith("    word"));
    }

    @Test
    void aWordLongerThanALineStaysWhole() {
        assertThat(Paragraph.of("", "x".repeat(100))).isEqualTo("x".repeat(100) + "\n");
    }
}
