package org.lowfirst.app.table;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MappingIterator;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import tools.jackson.dataformat.csv.CsvSchema;
import tools.jackson.dataformat.csv.CsvWriteFeature;

/** Writes and reads comma-separated rows (RFC 4180: rows end in CR LF). */
final class CsvText {

    private static final String ROW_END = "\r\n";

    private CsvText() {}

    static String write(List<List<String>> rows) {
        return Loaded.WRITER.writeValueAsString(rows);
    }

    /**
     * The rows of a text, cells as they stand; rows without any text are left out.
     *
     * @param separator what sets cells apart
     * @throws Unreadable when a quote is never closed
     */
    static List<List<String>> read(String text, char separator) throws Unreadable {
        CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(separator);
        List<List<String>> rows = new ArrayList<>();
        try (MappingIterator<List<String>> each = Loaded.MAPPER
                .readerForListOf(String.class)
                .with(CsvReadFeature.WRAP_AS_ARRAY)
                .with(schema)
                .readValues(text)) {
            while (each.hasNextValue()) {
                List<String> row = each.nextValue();
                if (row.stream().anyMatch(cell -> !cell.isBlank())) {
                    rows.add(row);
                }
            }
            return rows;
        } catch (JacksonException broken) {
            throw new Unreadable(rows.size() + 1, broken);
        }
    }

    /** The text stops being rows and cells somewhere. */
    static final class Unreadable extends Exception {

        private static final long serialVersionUID = 1L;

        private final int row;

        Unreadable(int row, Throwable why) {
            super(why);
            this.row = row;
        }

        /** Number of the first row that cannot be read, from 1. */
        int row() {
            return row;
        }
    }

    /** Loaded by those who meet CSV only. */
    private static final class Loaded {

        static final CsvMapper MAPPER = CsvMapper.builder()
                .enable(CsvWriteFeature.STRICT_CHECK_FOR_QUOTING)
                .build();

        static final ObjectWriter WRITER = MAPPER.writer(CsvSchema.emptySchema().withLineSeparator(ROW_END));
    }
}
