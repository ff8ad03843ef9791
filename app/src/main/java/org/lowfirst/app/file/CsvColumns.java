package org.lowfirst.app.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Which column of a CSV file is where, and the numbers in them. */
public final class CsvColumns {

    private static final Pattern NUMBER = Pattern.compile("[-+]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][-+]?[0-9]+)?");

    private final List<CsvCell> header;
    private final Map<String, Integer> places = new LinkedHashMap<>();
    private final Problems problems;

    /**
     * @param header the names of the columns as written
     * @param known names that are looked for; a column with another name is left out
     */
    public CsvColumns(List<CsvCell> header, List<String> known, Problems problems) {
        this.header = List.copyOf(header);
        this.problems = problems;
        for (int i = 0; i < header.size(); i++) {
            CsvCell cell = header.get(i);
            if (known.contains(cell.text()) && places.putIfAbsent(cell.text(), i) != null) {
                problems.error(cell.place(), problems.say("csv.two-columns", Map.of("name", cell.text())));
            }
        }
    }

    public boolean has(String name) {
        return places.containsKey(name);
    }

    /** Where the header stands. */
    public Place place() {
        Place first = header.get(0).place();
        Place last = header.get(header.size() - 1).place();
        int width = last.column() + last.width() - first.column();
        return new Place(first.line(), first.column(), Math.max(1, width));
    }

    /** Whether there is a column of each name; for each that is missing a problem says so. */
    public boolean require(List<String> names) {
        List<String> missing = new ArrayList<>(names);
        missing.removeAll(places.keySet());
        missing.forEach(this::reportMissing);
        return missing.isEmpty();
    }

    private void reportMissing(String name) {
        Optional<CsvCell> close = header.stream()
                .filter(cell -> !places.containsKey(cell.text()))
                .filter(cell -> NearestKey.find(cell.text(), List.of(name)).isPresent())
                .findFirst();
        problems.error(
                close.map(CsvCell::place).orElseGet(this::place),
                problems.say(
                        "csv.no-column",
                        Map.of(
                                "name",
                                name,
                                "what",
                                close.map(cell -> problems.say(
                                                "csv.no-column.close", Map.of("close", cell.text(), "name", name)))
                                        .orElseGet(() -> problems.say("csv.no-column.first-row", Map.of())))));
    }

    /** Whether the row has as many cells as the header; otherwise a problem says so. */
    public boolean fits(List<CsvCell> row) {
        if (row.size() == header.size()) {
            return true;
        }
        Place at = row.get(Math.min(row.size(), header.size() + 1) - 1).place();
        problems.error(at, problems.say("csv.cells", Map.of("row", cells(row.size()), "header", cells(header.size()))));
        return false;
    }

    /** The cell of a row under a name. */
    public CsvCell cell(List<CsvCell> row, String name) {
        Integer place = places.get(name);
        if (place == null) {
            throw new IllegalArgumentException("The column (" + name + ") must be one that is there.");
        }
        return row.get(place);
    }

    /** The number of a row under a name; empty when there is none, and then a problem says why. */
    public OptionalDouble number(List<CsvCell> row, String name) {
        CsvCell cell = cell(row, name);
        if (cell.text().isEmpty()) {
            problems.error(cell.place(), problems.say("csv.empty", Map.of("name", name)));
            return OptionalDouble.empty();
        }
        double value = NUMBER.matcher(cell.text()).matches() ? Double.parseDouble(cell.text()) : Double.NaN;
        if (!Double.isFinite(value)) {
            problems.error(cell.place(), problems.say("csv.no-number", Map.of("name", name, "text", cell.text())));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    private String cells(int count) {
        return problems.say(
                count == 1 ? "csv.cell.one" : "csv.cell.more", count == 1 ? Map.of() : Map.of("count", "" + count));
    }
}
