package org.lowfirst.web.bottles;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.lowfirst.app.table.BottleColumn;
import org.lowfirst.app.table.Pasted;

/** The rows of a table of bottles as fields of a form: r0-name, r0-owner, ..., r1-name, ... */
final class ManyRows {

    private static final List<BottleColumn> ALWAYS = List.of(
            BottleColumn.NAME, BottleColumn.OWNER, BottleColumn.VOLUME, BottleColumn.MARKED, BottleColumn.USUAL);

    private ManyRows() {}

    static String field(int row, String what) {
        return "r" + row + "-" + what;
    }

    static String field(int row, BottleColumn column) {
        return field(row, column.key());
    }

    /** The fields a row shows: those every bottle needs, and whatever else the table had. */
    static List<BottleColumn> columns(List<Pasted.Row> rows) {
        return Stream.of(BottleColumn.values())
                .filter(column -> ALWAYS.contains(column)
                        || rows.stream().anyMatch(row -> row.cells().containsKey(column)))
                .toList();
    }

    /** The form that shows rows. */
    static Map<String, String> filled(List<Pasted.Row> rows) {
        Map<String, String> fields = new HashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            int row = i;
            rows.get(i).cells().forEach((column, text) -> fields.put(field(row, column), text));
        }
        return fields;
    }

    /** The rows of a form that was sent, without those that are to be left out. */
    static List<Pasted.Row> read(Map<String, String> typed) {
        List<Pasted.Row> rows = new ArrayList<>();
        for (int i = 0; typed.containsKey(field(i, BottleColumn.NAME)); i++) {
            if (!typed.containsKey(field(i, "out"))) {
                rows.add(row(typed, i));
            }
        }
        return rows;
    }

    private static Pasted.Row row(Map<String, String> typed, int number) {
        Map<BottleColumn, String> cells = new EnumMap<>(BottleColumn.class);
        for (BottleColumn column : BottleColumn.values()) {
            String text = typed.get(field(number, column));
            if (text != null) {
                cells.put(column, text);
            }
        }
        return new Pasted.Row(cells);
    }

    /** A row in one line. */
    static String summary(Pasted.Row row) {
        return Stream.of(BottleColumn.NAME, BottleColumn.OWNER, BottleColumn.VOLUME, BottleColumn.MARKED)
                .map(row::cell)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }
}
