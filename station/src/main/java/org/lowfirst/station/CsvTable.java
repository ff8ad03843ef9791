package org.lowfirst.station;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Rows of a resource file: comma separated (RFC 4180, without line breaks in fields), lines beginning with # are comments.
 *
 * @param file name of the resource, for messages
 */
record CsvTable(String file, List<Row> rows) {

    /**
     * @param line line number in the file, from 1
     * @param cells cells in order, quotes removed
     */
    record Row(String file, int line, List<String> cells) {

        String cell(int column) {
            return cells.get(column);
        }

        IllegalArgumentException wrong(String what) {
            return new IllegalArgumentException(file + ", line " + line + ": " + what + "\n" + String.join(",", cells));
        }
    }

    static CsvTable ofResource(String file, int columns) {
        try (InputStream in = CsvTable.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalArgumentException("The resource " + file + " is missing.");
            }
            return of(file, new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)), columns);
        } catch (IOException e) {
            throw new UncheckedIOException("The resource " + file + " could not be read.", e);
        }
    }

    static CsvTable of(String file, BufferedReader reader, int columns) {
        List<Row> rows = new ArrayList<>();
        int number = 0;
        for (String line : reader.lines().toList()) {
            number++;
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            Row row = new Row(file, number, cells(line));
            if (row.cells().size() != columns) {
                throw row.wrong("there are " + row.cells().size() + " cells; there must be " + columns + ".");
            }
            rows.add(row);
        }
        return new CsvTable(file, List.copyOf(rows));
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean doubled = quoted && c == '"' && i + 1 < line.length() && line.charAt(i + 1) == '"';
            if (doubled) {
                cell.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return List.copyOf(cells);
    }
}
