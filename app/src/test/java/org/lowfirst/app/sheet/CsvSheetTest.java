package org.lowfirst.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rules of RFC 4180, section 2, each with the text that follows from it. */
class CsvSheetTest {

    @Test
    void rowsEndWithCarriageReturnAndLineFeed() {
        assertThat(written(new CsvSheet()
                        .row(List.of("a", "b"))
                        .text("c")
                        .text("d")
                        .endRow()))
                .isEqualTo("a,b\r\nc,d\r\n");
    }

    @Test
    void commasQuotesAndLineBreaksStandInQuotesAndQuotesAreDoubled() {
        assertThat(written(new CsvSheet()
                        .text("Vale, N.")
                        .text("the \"new\" one")
                        .text("two\r\nlines")
                        .endRow()))
                .isEqualTo("\"Vale, N.\",\"the \"\"new\"\" one\",\"two\r\nlines\"\r\n");
    }

    @Test
    void textThatASpreadsheetWouldCalculateGetsAnApostrophe() {
        CsvSheet sheet = new CsvSheet();
        for (String text : List.of("=1+1", "+1", "-1", "@A1", "\tx", "ordinary = text")) {
            sheet.text(text);
        }
        assertThat(written(sheet.endRow())).isEqualTo("'=1+1,'+1,'-1,'@A1,'\tx,ordinary = text\r\n");
    }

    @Test
    void numbersKeepTheirDigitsAndTheirSign() {
        assertThat(written(new CsvSheet()
                        .number(new BigDecimal("-1.50"))
                        .number(new BigDecimal("1E+3"))
                        .number(7)
                        .empty()
                        .endRow()))
                .isEqualTo("-1.50,1000,7,\r\n");
    }

    private static String written(CsvSheet sheet) {
        return new String(sheet.toBytes(), StandardCharsets.UTF_8);
    }
}
