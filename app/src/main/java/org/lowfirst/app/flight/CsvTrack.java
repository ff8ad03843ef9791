package org.lowfirst.app.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.lowfirst.app.file.CsvCell;
import org.lowfirst.app.file.CsvColumns;
import org.lowfirst.app.file.CsvRows;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.SourceText;
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
    private final TrackNumbers numbers;
    private final List<Fix> fixes = new ArrayList<>();
    private CsvColumns columns;
    private String altitude = "altitude_m";

    private CsvTrack(Problems problems) {
        this.problems = problems;
        this.numbers = new TrackNumbers(problems.language());
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
                                        ? problems.say("track.csv.cabin", Map.of())
                                        : problems.say("track.csv.pressure-altitudes", Map.of())));
    }

    @Override
    public boolean header(List<CsvCell> names) {
        columns = new CsvColumns(names, COLUMNS, problems);
        if (names.size() == 1 && names.get(0).text().contains(";")) {
            problems.error(columns.place(), problems.say("track.csv.semicolons", Map.of()));
            return false;
        }
        List<String> there = HEIGHTS.stream().filter(columns::has).toList();
        if (there.size() > 1) {
            problems.error(
                    columns.place(),
                    problems.say("track.csv.both", Map.of("one", there.get(0), "other", there.get(1))));
            return false;
        }
        if (there.isEmpty()) {
            problems.error(columns.place(), problems.say("track.csv.no-height", Map.of()));
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
                    problems.say(
                            "track.csv.time",
                            Map.of(
                                    "seconds",
                                    numbers.grouped(seconds.getAsDouble()),
                                    "before",
                                    numbers.grouped(fixes.get(fixes.size() - 1).seconds()))));
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
                    problems.say(
                            "track.csv.pressure",
                            Map.of(
                                    "value", numbers.grouped(value),
                                    "low", numbers.grouped(LOWEST_HPA),
                                    "high", numbers.grouped(HIGHEST_HPA))));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                StandardDay.altitude(new AbsolutePressure(100.0 * value)).metres());
    }
}
