package org.lowfirst.app.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.lowfirst.app.file.CsvCell;
import org.lowfirst.app.file.CsvColumns;
import org.lowfirst.app.file.CsvRows;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.SourceText;
import org.lowfirst.app.sheet.Numerals;

/** Reads a track from CSV: column time_s [s] and one of altitude_m and altitude_ft (pressure altitude). */
final class CsvTrack implements CsvRows.Reader {

    private static final List<String> COLUMNS = List.of("time_s", "altitude_m", "altitude_ft");
    private static final double METRES_PER_FOOT = 0.3048;

    private final Problems problems;
    private final List<Fix> fixes = new ArrayList<>();
    private CsvColumns columns;
    private String altitude = "altitude_m";

    private CsvTrack(Problems problems) {
        this.problems = problems;
        this.columns = new CsvColumns(List.of(), List.of(), problems);
    }

    /** The track; empty when it cannot be used, and then problems say why. */
    static Optional<Track> read(SourceText source, Problems problems) {
        CsvTrack reading = new CsvTrack(problems);
        CsvRows.read(source, reading, problems);
        return new TrackCheck(problems)
                .track(reading.fixes, List.of("Altitudes of the track are taken as pressure altitudes."));
    }

    @Override
    public boolean header(List<CsvCell> names) {
        columns = new CsvColumns(names, COLUMNS, problems);
        if (columns.has("altitude_m") && columns.has("altitude_ft")) {
            problems.error(
                    columns.place(),
                    "There are both altitude_m and altitude_ft. Keep one, or rename the other column.");
            return false;
        }
        if (!columns.has("altitude_m") && !columns.has("altitude_ft")) {
            problems.error(
                    columns.place(), "There is no column altitude_m or altitude_ft. The first row names the columns.");
            columns.require(List.of("time_s"));
            return false;
        }
        altitude = columns.has("altitude_m") ? "altitude_m" : "altitude_ft";
        return columns.require(List.of("time_s"));
    }

    @Override
    public void row(List<CsvCell> cells) {
        if (!columns.fits(cells)) {
            return;
        }
        OptionalDouble seconds = columns.number(cells, "time_s");
        OptionalDouble height = columns.number(cells, altitude);
        if (seconds.isEmpty() || height.isEmpty()) {
            return;
        }
        if (!fixes.isEmpty()
                && !(seconds.getAsDouble() > fixes.get(fixes.size() - 1).seconds())) {
            problems.error(
                    columns.cell(cells, "time_s").place(),
                    "time_s (" + Numerals.grouped(seconds.getAsDouble()) + " s) must be after that of the row before ("
                            + Numerals.grouped(fixes.get(fixes.size() - 1).seconds())
                            + " s). Correct it or take the row out.");
            return;
        }
        double metres = height.getAsDouble() * (altitude.equals("altitude_ft") ? METRES_PER_FOOT : 1.0);
        fixes.add(new Fix(
                seconds.getAsDouble(), metres, columns.cell(cells, altitude).place()));
    }
}
