package org.lowfirst.app.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.dataformat.csv.CsvFactory;
import tools.jackson.dataformat.csv.CsvReadFeature;

/**
 * Reads comma-separated rows (RFC 4180) with the place of each cell. Empty lines and lines that start with # are left out.
 */
public final class CsvRows {

    /** A file with more problems than this is the wrong file; the rest of it is not looked at. */
    static final int MOST_PROBLEMS = 100;

    private CsvRows() {}

    /** Takes the rows one by one. */
    public interface Reader {

        /**
         * The first row, which names the columns.
         *
         * @return whether the other rows are of use
         */
        boolean header(List<CsvCell> names);

        /** A row after the header; it may have more or fewer cells than the header. */
        void row(List<CsvCell> cells);
    }

    /** Hands the rows of a text to a reader; what is not CSV becomes a problem, and reading ends there. */
    public static void read(SourceText source, Reader reader, Problems problems) {
        try (JsonParser parser = Loaded.FACTORY.createParser(ObjectReadContext.empty(), source.text())) {
            boolean header = true;
            while (parser.nextToken() == JsonToken.START_ARRAY) {
                List<CsvCell> cells = cells(parser);
                if (header) {
                    if (!reader.header(cells)) {
                        return;
                    }
                    header = false;
                } else {
                    reader.row(cells);
                    if (problems.count() >= MOST_PROBLEMS) {
                        problems.error(
                                cells.get(0).place(),
                                problems.say("csv.enough", Map.of("count", Integer.toString(MOST_PROBLEMS))));
                        return;
                    }
                }
            }
            if (header) {
                problems.fileError(problems.say("csv.no-rows", Map.of()));
            }
        } catch (StreamReadException broken) {
            problems.error(placeOf(broken.getLocation()), problems.say("csv.broken", Map.of()));
        }
    }

    private static List<CsvCell> cells(JsonParser parser) {
        List<CsvCell> cells = new ArrayList<>();
        while (parser.nextToken() == JsonToken.VALUE_STRING) {
            cells.add(cell(parser.getString(), parser.currentTokenLocation()));
        }
        return cells;
    }

    private static CsvCell cell(String raw, TokenStreamLocation at) {
        String text = raw.strip();
        int indent = text.isEmpty() ? 0 : raw.indexOf(text);
        return new CsvCell(
                text, new Place(at.getLineNr(), Math.max(1, at.getColumnNr()) + indent, Math.max(1, text.length())));
    }

    private static Place placeOf(TokenStreamLocation at) {
        return new Place(Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr() - 1), 1);
    }

    /** Loaded by those who read CSV only. */
    private static final class Loaded {

        static final CsvFactory FACTORY = CsvFactory.builder()
                .enable(CsvReadFeature.ALLOW_COMMENTS)
                .enable(CsvReadFeature.SKIP_EMPTY_LINES)
                .build();
    }
}
