package org.lowfirst.app.sheet;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A table as comma-separated values: RFC 4180, CRLF after every row, UTF-8. Text that a spreadsheet would take for a formula gets
 * an apostrophe in front; numbers are written as they are. Not thread-safe.
 *
 * @see "RFC 4180, section 2"
 */
public final class CsvSheet {

    private static final String FORMULA_STARTS = "=+-@\t\r";

    private final StringBuilder out = new StringBuilder();
    private boolean first = true;

    /** A cell of words. */
    public CsvSheet text(String text) {
        boolean formula = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
        return cell(formula ? "'" + text : text);
    }

    /** A cell with a number, with the digits it has. */
    public CsvSheet number(BigDecimal number) {
        return cell(number.toPlainString());
    }

    /** A cell with a whole number. */
    public CsvSheet number(long number) {
        return cell(Long.toString(number));
    }

    public CsvSheet empty() {
        return cell("");
    }

    /** A row of words, e.g. the header. */
    public CsvSheet row(List<String> texts) {
        texts.forEach(this::text);
        return endRow();
    }

    public CsvSheet endRow() {
        out.append("\r\n");
        first = true;
        return this;
    }

    private CsvSheet cell(String value) {
        if (!first) {
            out.append(',');
        }
        first = false;
        boolean quoted = value.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        out.append(quoted ? '"' + value.replace("\"", "\"\"") + '"' : value);
        return this;
    }

    /** Everything written so far. */
    public byte[] toBytes() {
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }
}
