package org.lowfirst.station.stamp;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.gas.PressureUnit;

/** The table of codes in marks.csv. */
public final class MarkTable {

    private static final String FILE = "marks.csv";
    private static final int COLUMNS = 7;

    private static final MarkTable BUILT_IN = load();

    private final Map<String, SpecificationMark> marks = new LinkedHashMap<>();

    private MarkTable() {}

    /** The table that comes with the program. */
    public static MarkTable builtIn() {
        return BUILT_IN;
    }

    private static MarkTable load() {
        InputStream stream = MarkTable.class.getResourceAsStream(FILE);
        if (stream == null) {
            throw new IllegalStateException("The table " + FILE + " is missing from the program.");
        }
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return read(FILE, reader.lines().toList());
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The table " + FILE + " cannot be read.", unreadable);
        }
    }

    /**
     * Reads a table, strictly.
     *
     * @param file name to show when something is wrong
     * @throws IllegalArgumentException with file, line and the line itself
     */
    static MarkTable read(String file, List<String> lines) {
        MarkTable table = new MarkTable();
        boolean headed = false;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            if (headed) {
                table.add(new Row(file, i + 1, line));
            }
            headed = true;
        }
        return table;
    }

    public Optional<SpecificationMark> find(Convention convention, String code) {
        return Optional.ofNullable(marks.get(key(convention, code)));
    }

    /** All rows of one convention, in the order of the table. */
    public List<SpecificationMark> list(Convention convention) {
        return marks.values().stream()
                .filter(mark -> mark.convention() == convention)
                .toList();
    }

    private void add(Row row) {
        String[] cells = row.line().split(";", -1);
        if (cells.length != COLUMNS) {
            throw row.wrong("There are " + cells.length + " columns, " + COLUMNS + " are needed.");
        }
        SpecificationMark mark = new SpecificationMark(
                row.choice(Convention.class, cells[0]),
                cells[1],
                row.choice(Wall.class, cells[2]),
                row.unit(cells[3]),
                row.remembered(cells[4]),
                cells[5],
                cells[6]);
        if (marks.put(key(mark.convention(), mark.code()), mark) != null) {
            throw row.wrong("The code \"" + mark.code() + "\" is there twice.");
        }
    }

    private static String key(Convention convention, String code) {
        return convention + " " + code;
    }

    /** One line of the table, to point at when something is wrong with it. */
    private record Row(String file, int number, String line) {

        IllegalArgumentException wrong(String problem) {
            return new IllegalArgumentException(problem + "\n" + file + ":" + number + "\n" + line);
        }

        <E extends Enum<E>> E choice(Class<E> type, String word) {
            for (E candidate : type.getEnumConstants()) {
                if (candidate.name().toLowerCase(Locale.ROOT).equals(word)) {
                    return candidate;
                }
            }
            throw wrong("\"" + word + "\" is not known here.");
        }

        PressureUnit unit(String symbol) {
            for (PressureUnit unit : PressureUnit.values()) {
                if (unit.symbol().equals(symbol)) {
                    return unit;
                }
            }
            throw wrong("\"" + symbol + "\" is not a unit of pressure.");
        }

        boolean remembered(String status) {
            return switch (status) {
                case "read" -> false;
                case "from memory" -> true;
                default -> throw wrong("\"" + status + "\" is not one of: read, from memory.");
            };
        }
    }
}
