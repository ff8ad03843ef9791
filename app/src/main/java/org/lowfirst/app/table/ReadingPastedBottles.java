package org.lowfirst.app.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lowfirst.app.table.KnownHeadings.Heading;
import org.lowfirst.app.words.Wording;

/**
 * Reads a table of bottles as it comes from a spreadsheet: cells set apart by tabs, semicolons or commas, headings in the first
 * row. Thread-safe.
 */
public final class ReadingPastedBottles {

    /** More rows than this are no first day but another program's business. */
    public static final int MOST_ROWS = 500;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final Wording wording;

    public ReadingPastedBottles(Locale locale) {
        this.wording = Wording.of(ReadingPastedBottles.class, locale);
    }

    public Pasted read(String text) {
        String bare = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        if (bare.isBlank()) {
            return unreadable("pasted.nothing", Map.of());
        }
        try {
            return table(CsvText.read(bare, separator(bare)));
        } catch (CsvText.Unreadable broken) {
            return unreadable("pasted.broken", Map.of("row", Integer.toString(broken.row())));
        }
    }

    private Pasted table(List<List<String>> rows) {
        List<String> first = rows.get(0);
        List<Optional<Heading>> headings =
                first.stream().map(KnownHeadings::find).toList();
        Map<BottleColumn, String> known = new EnumMap<>(BottleColumn.class);
        List<String> leftOut = new ArrayList<>();
        for (int i = 0; i < first.size(); i++) {
            String written = first.get(i).strip();
            if (headings.get(i).isEmpty()) {
                if (!written.isEmpty()) {
                    leftOut.add(written);
                }
                continue;
            }
            String earlier = known.put(headings.get(i).get().column(), written);
            if (earlier != null) {
                return unreadable("pasted.twice", Map.of("first", earlier, "second", written));
            }
        }
        if (!known.containsKey(BottleColumn.NAME)) {
            return unreadable("pasted.no-name", Map.of("cells", String.join(", ", first)));
        }
        return below(headings, rows.subList(1, rows.size()), leftOut);
    }

    private Pasted below(List<Optional<Heading>> headings, List<List<String>> rows, List<String> leftOut) {
        if (rows.isEmpty()) {
            return unreadable("pasted.no-rows", Map.of());
        }
        if (rows.size() > MOST_ROWS) {
            return unreadable(
                    "pasted.too-many",
                    Map.of("count", Integer.toString(rows.size()), "most", Integer.toString(MOST_ROWS)));
        }
        List<BottleColumn> columns =
                headings.stream().flatMap(Optional::stream).map(Heading::column).toList();
        return new Pasted.Table(
                columns, rows.stream().map(row -> row(headings, row)).toList(), leftOut);
    }

    private static Pasted.Row row(List<Optional<Heading>> headings, List<String> cells) {
        Map<BottleColumn, String> typed = new EnumMap<>(BottleColumn.class);
        for (int i = 0; i < Math.min(headings.size(), cells.size()); i++) {
            String cell = CellText.unguarded(cells.get(i)).strip();
            headings.get(i).ifPresent(heading -> typed.put(heading.column(), withUnit(cell, heading.unit())));
        }
        return new Pasted.Row(typed);
    }

    private static String withUnit(String cell, String unit) {
        boolean bare = !cell.isEmpty() && cell.chars().noneMatch(Character::isLetter);
        return bare && !unit.isEmpty() ? cell + " " + unit : cell;
    }

    /** What stands most often in the first line: tab before semicolon before comma, for commas also stand in numbers. */
    private static char separator(String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        if (first.indexOf('\t') >= 0) {
            return '\t';
        }
        return first.indexOf(';') >= 0 ? ';' : ',';
    }

    private Pasted unreadable(String key, Map<String, String> values) {
        return new Pasted.Unreadable(wording.text(key, values));
    }
}
