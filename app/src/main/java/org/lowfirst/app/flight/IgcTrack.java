package org.lowfirst.app.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.lowfirst.app.file.Place;
import org.lowfirst.app.file.Problems;
import org.lowfirst.app.file.SourceText;

/**
 * Reads a flight recorder's file: the B records, each a fix with time and two altitudes.
 *
 * <p>Layout of a B record: B, time HHMMSS (UTC), latitude (8 characters), longitude (9), validity A or V, pressure altitude (5,
 * metres above 1013.25 hPa), GNSS altitude (5). Other records and what follows in the line are left alone.
 *
 * @see "FAI Sporting Code, Technical specification for GNSS flight recorders, appendix A, B record (from memory)"
 */
final class IgcTrack {

    private static final int LENGTH = 35;
    private static final int TIME = 1;
    private static final int VALIDITY = 24;
    private static final int PRESSURE_ALTITUDE = 25;
    private static final int GNSS_ALTITUDE = 30;
    private static final int ALTITUDE_WIDTH = 5;
    private static final int MOST_PROBLEMS = 50;

    private static final Pattern CLOCK = Pattern.compile("([01][0-9]|2[0-3])[0-5][0-9][0-5][0-9]");
    private static final Pattern HEIGHT = Pattern.compile("-[0-9]{4}|[0-9]{5}");
    private static final double DAY_S = 86_400.0;

    private final Problems problems;
    private final List<IgcFix> fixes = new ArrayList<>();
    private double midnight_s;

    private IgcTrack(Problems problems) {
        this.problems = problems;
    }

    /** The track; empty when it cannot be used, and then problems say why. */
    static Optional<Track> read(SourceText source, Problems problems) {
        IgcTrack reading = new IgcTrack(problems);
        int number = 0;
        for (String line : source.lines()) {
            number++;
            if (line.startsWith("B") && problems.count() < MOST_PROBLEMS) {
                reading.record(line.stripTrailing(), number);
            }
        }
        if (reading.fixes.isEmpty() && !problems.haveErrors()) {
            problems.fileError(problems.say("track.igc.no-fixes", Map.of()));
            return Optional.empty();
        }
        List<String> notes = new ArrayList<>();
        return new TrackCheck(problems).track(new PressureAltitudes(reading.fixes, notes, problems).fixes(), notes);
    }

    private void record(String line, int number) {
        if (line.length() < LENGTH) {
            problems.error(
                    new Place(number, 1, Math.max(1, line.length())),
                    problems.say(
                            "track.igc.short",
                            Map.of("length", Integer.toString(line.length()), "least", Integer.toString(LENGTH))));
            return;
        }
        char validity = line.charAt(VALIDITY);
        if (!CLOCK.matcher(line.substring(TIME, TIME + 6)).matches()) {
            unreadable(number, TIME, 6, "time");
        } else if (validity != 'A' && validity != 'V') {
            unreadable(number, VALIDITY, 1, "validity");
        } else if (isNoHeight(line, PRESSURE_ALTITUDE)) {
            unreadable(number, PRESSURE_ALTITUDE, ALTITUDE_WIDTH, "pressure-altitude");
        } else if (isNoHeight(line, GNSS_ALTITUDE)) {
            unreadable(number, GNSS_ALTITUDE, ALTITUDE_WIDTH, "gnss-altitude");
        } else {
            fix(line, number, validity);
        }
    }

    private void fix(String line, int number, char validity) {
        double clock_s = 3600.0 * two(line, TIME) + 60.0 * two(line, TIME + 2) + two(line, TIME + 4);
        double last_s = fixes.isEmpty() ? clock_s : fixes.get(fixes.size() - 1).seconds();
        if (midnight_s + clock_s < last_s - DAY_S / 2) {
            midnight_s += DAY_S;
        }
        double seconds = midnight_s + clock_s;
        if (seconds < last_s) {
            problems.error(
                    new Place(number, TIME + 1, 6),
                    problems.say(
                            "track.igc.back",
                            Map.of("seconds", new TrackNumbers(problems.language()).grouped(last_s - seconds))));
            return;
        }
        if (seconds > last_s || fixes.isEmpty()) {
            fixes.add(new IgcFix(
                    seconds,
                    height(line, PRESSURE_ALTITUDE),
                    height(line, GNSS_ALTITUDE),
                    validity == 'A',
                    new Place(number, PRESSURE_ALTITUDE + 1, ALTITUDE_WIDTH)));
        }
    }

    private void unreadable(int number, int from, int width, String what) {
        problems.error(new Place(number, from + 1, width), problems.say("track.igc." + what, Map.of()));
    }

    private static boolean isNoHeight(String line, int from) {
        return !HEIGHT.matcher(line.substring(from, from + ALTITUDE_WIDTH)).matches();
    }

    private static int height(String line, int from) {
        return Integer.parseInt(line.substring(from, from + ALTITUDE_WIDTH));
    }

    private static int two(String line, int from) {
        return Integer.parseInt(line.substring(from, from + 2));
    }
}
