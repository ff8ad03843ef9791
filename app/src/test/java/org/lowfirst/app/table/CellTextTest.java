package org.lowfirst.app.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The beginnings that a spreadsheet may take for a formula are those of the OWASP page on CSV injection (from memory). */
final class CellTextTest {

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-A", "@x", "\tx", "\rx", "'quoted", "'=x", "''", "=", "plain", "", "a=b"})
    void everyTextComesBackAsItWas(String text) {
        assertThat(CellText.unguarded(CellText.guarded(text))).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-A", "@x", "\tx", "\rx"})
    void whatMayBeTakenForAFormulaNoLongerBeginsLikeOne(String text) {
        assertThat(CellText.guarded(text)).startsWith("'");
    }

    @Test
    void anApostropheThatGuardsNothingStays() {
        assertThat(CellText.unguarded("'tis")).isEqualTo("'tis");
    }
}
