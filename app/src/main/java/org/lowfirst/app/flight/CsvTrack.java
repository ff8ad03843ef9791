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
import org.lowfirst.gas.AbsolutePressure;
import org.lowfirst.planning.flight.StandardDay;

/** Reads a track from CSV: column time_s [s] and one of altitude_m, altitude_ft (pressure altitude) and pressure_hPa (of the cabin). */
final class CsvTrack implements CsvRows.Reader {

    private static final String PRESSURE = "pressure_hPa";
    private static final List<String> HEIGHTS = List.of("altitude_m", "altitude_ft", PRESSURE);
    private static final List<String> COLUMNS = List.of("time_s", "altitude_m", "altitude_ft", PRESSURE);
    /** Of the standard day at 20 km, and above that of any airfield. */
    private static final double LOWEST_HPA = 55.0;

    private static final double HIGHEST_HPA = 1_075.0;
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
                .track(
                        reading.fixes,
                        List.of(
                                reading.altitude.equals(PRESSURE)
                                        ? "Pressures of the track are taken as those of the cabin; altitudes are those of"
                                                + " the ICAO standard atmosphere."
                                        : "Altitudes of the track are taken as pressure altitudes."));
    }

    @Override
    public boolean header(List<CsvCell> names) {
        columns = new CsvColumns(names, COLUMNS, problems);
        if (names.size() == 1 && names.get(0).text().contains(";")) {
            problems.error(
                    columns.place(),
                    "The columns are set apart by semicolons; commas are needed, and points before decimals. Save the"
                            + " table again so.");
            return false;
        }
        List<String> there = HEIGHTS.stream().filter(columns::has).toList();
        if (there.size() > 1) {
            problems.error(
                    columns.place(),
                    "There are both " + there.get(0) + " and " + there.get(1)
                            + ". Keep one, or rename the other column.");
            return false;
        }
        if (there.isEmpty()) {
            problems.error(
                    columns.place(),
                    "There is no column altitude_m or altitude_ft, nor pressure_hPa. The first row names the columns.");
            columns.require(List.of("time_s"));
            return false;
        }
        altitude = there.get(0);
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
        OptionalDouble metres = metres(height.getAsDouble(), cells);
        if (metres.isPresent()) {
            fixes.add(new Fix(
                    seconds.getAsDouble(),
                    metres.getAsDouble(),
                    columns.cell(cells, altitude).place()));
        }
    }

    /** The altitude a cell means; empty, with a problem, for a pressure nobody flies at. */
    private OptionalDouble metres(double value, List<CsvCell> cells) {
        if (!altitude.equals(PRESSURE)) {
            return OptionalDouble.of(value * (altitude.equals("altitude_ft") ? METRES_PER_FOOT : 1.0));
        }
        if (!(value >= LOWEST_HPA && value <= HIGHEST_HPA)) {
            problems.error(
                    columns.cell(cells, altitude).place(),
                    "pressure_hPa (" + Numerals.grouped(value) + " hPa) must be " + Numerals.grouped(LOWEST_HPA)
                            + " to " + Numerals.grouped(HIGHEST_HPA) + " hPa. Check the number and its unit.");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                StandardDay.altitude(new AbsolutePressure(100.0 * value)).metres());
    }
}
