package org.lowfirst.app.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class SentTextTest {

    private static final String TEXT = "Fülldruck;Größe\r\nÄhre;5\r\n";

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "windows-1252"})
    void theSameTextIsReadInTheEncodingsOfSpreadsheets(String encoding) {
        assertThat(SentText.of(TEXT.getBytes(Charset.forName(encoding)))).isEqualTo(TEXT);
    }

    @Test
    void littleEndianWithItsMarkIsRead() {
        assertThat(SentText.of(("\uFEFF" + TEXT).getBytes(StandardCharsets.UTF_16LE)))
                .isEqualTo(TEXT);
    }

    @Test
    void anEmptyFileIsAnEmptyText() {
        assertThat(SentText.of(new byte[0])).isEmpty();
    }
}
