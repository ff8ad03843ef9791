package org.lowfirst.app.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The definition of RFC 4180, section 2, rule by rule (from memory). */
final class CsvTextReferenceTest {

    /** Rules 1 and 2: each record on a line of its own, ended by CR LF, also the last. */
    @Test
    void recordsEndInCarriageReturnAndLineFeed() {
        assertThat(CsvText.write(List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"))))
                .isEqualTo("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n");
    }

    /** Rule 6: fields with line breaks, double quotes and commas are enclosed in double quotes. */
    @Test
    void fieldsWithBreaksQuotesOrCommasAreQuoted() {
        assertThat(CsvText.write(List.of(List.of("aaa", "b\r\nbb", "c,c")))).isEqualTo("aaa,\"b\r\nbb\",\"c,c\"\r\n");
    }

    /** Rule 7: a double quote inside a field is written twice. */
    @Test
    void aQuoteIsWrittenTwice() throws CsvText.Unreadable {
        assertThat(CsvText.write(List.of(List.of("aaa", "b\"bb", "ccc")))).isEqualTo("aaa,\"b\"\"bb\",ccc\r\n");
        assertThat(CsvText.read("\"aaa\",\"b\"\"bb\",\"ccc\"\r\n", ','))
                .containsExactly(List.of("aaa", "b\"bb", "ccc"));
    }
}
