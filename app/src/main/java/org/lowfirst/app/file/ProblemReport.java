package org.lowfirst.app.file;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Shows problems under the lines they are in:
 *
 * <pre>
 * bench.yaml:4:38: error: The reading of supply A (2,015 bar) is above 400 bar. Maybe psi was meant.
 *     4 |   - {name: A, water_volume: 49 L, reading: 2015 bar}
 *       |                                            ^~~~~~~~
 * </pre>
 */
public final class ProblemReport {

    /** Characters of a source line that are shown; longer lines are cut around the place. */
    private static final int WIDTH = 100;

    private final SourceText source;
    private final List<String> lines;

    public ProblemReport(SourceText source) {
        this.source = source;
        this.lines = source.lines();
    }

    /** One problem: the sentence with its place, then the line and a caret when it has a place; ends with a new line. */
    public String show(Problem problem) {
        String sentence = problem.severity().word() + ": " + problem.sentence() + "\n";
        @Nullable Place place = problem.place();
        if (place == null) {
            return source.name() + ": " + sentence;
        }
        return String.format(Locale.ROOT, "%s:%d:%d: ", source.name(), place.line(), place.column())
                + sentence
                + excerpt(place);
    }

    private String excerpt(Place place) {
        int[] line = line(place.line()).codePoints().map(ProblemReport::shown).toArray();
        int at = Math.min(place.column() - 1, line.length);
        int from = line.length <= WIDTH ? 0 : Math.max(0, Math.min(at - WIDTH / 2, line.length - WIDTH));
        int to = Math.min(line.length, from + WIDTH);
        String text = (from > 0 ? "..." : "") + new String(line, from, to - from) + (to < line.length ? "..." : "");
        int indent = at - from + (from > 0 ? 3 : 0);
        int width = Math.max(1, Math.min(place.width(), to - at));
        String number = String.format(Locale.ROOT, "%5d", place.line());
        return number + " | " + text + "\n" + " ".repeat(number.length()) + " | " + " ".repeat(indent) + "^"
                + "~".repeat(width - 1) + "\n";
    }

    private String line(int number) {
        return number <= lines.size() ? lines.get(number - 1) : "";
    }

    /** One column for each code point: control characters (tabs among them) would move the caret or the screen. */
    private static int shown(int codePoint) {
        return Character.isISOControl(codePoint) ? ' ' : codePoint;
    }
}
