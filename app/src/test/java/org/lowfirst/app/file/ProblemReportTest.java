package org.lowfirst.app.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.lowfirst.app.file.Problem.Severity;

final class ProblemReportTest {

    @Test
    void caretStandsUnderTheValue() {
        assertThat(shown("a: 1\nreading: 600\n", new Place(2, 10, 3))).isEqualTo("""
                bench.yaml:2:10: error: Wrong.
                    2 | reading: 600
                      |          ^~~
                """);
    }

    @Test
    void tabsAndControlCharactersTakeOneColumn() {
        assertThat(shown("\ta:\u001b[31m 600", new Place(1, 10, 3))).isEqualTo("""
                bench.yaml:1:10: error: Wrong.
                    1 |  a: [31m 600
                      |          ^~~
                """);
    }

    @Test
    void longLinesAreCutAroundThePlace() {
        String shown = shown("x".repeat(500) + "HERE" + "y".repeat(500), new Place(1, 501, 4));
        assertThat(shown.lines()).allMatch(line -> line.length() <= 120);
        assertThat(shown).contains("...xxx").contains("yyy...");
        String[] lines = shown.split("\n");
        assertThat(lines[1].indexOf("HERE")).isEqualTo(lines[2].indexOf('^'));
    }

    @Test
    void aPlaceBeyondTheTextStillHasACaret() {
        assertThat(shown("a:", new Place(4, 9, 2))).endsWith("    4 | \n      | ^\n");
    }

    @Test
    void aProblemOfTheWholeFileHasNoExcerpt() {
        ProblemReport report = new ProblemReport(new SourceText("bench.yaml", "a: 1"));
        assertThat(report.show(new Problem(Severity.WARNING, null, "Odd."))).isEqualTo("bench.yaml: warning: Odd.\n");
    }

    private static String shown(String text, Place place) {
        return new ProblemReport(new SourceText("bench.yaml", text)).show(new Problem(Severity.ERROR, place, "Wrong."));
    }
}
