package org.lowfirst.app.honest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.honest.FactWriter.Noted;
import org.lowfirst.planning.contents.GaugeReading;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.FillId;
import org.lowfirst.station.SupplyId;

/** Cuts fills into what came from which supplies, by the bottle's readings. Used once. */
final class FillParts {

    private final BiPredicate<CylinderId, Noted> counts;
    private final Map<FillId, Course> courses = new HashMap<>();
    private final List<Part> parts = new ArrayList<>();

    /** A run of stages without a gap, by the bottle's first and last reading of it. */
    record Part(GaugeReading before, GaugeReading after) {}

    private static final class Course {
        final Set<CylinderId> drawn = new HashSet<>();

        @Nullable
        GaugeReading latest;

        @Nullable
        GaugeReading from;
    }

    private FillParts(BiPredicate<CylinderId, Noted> counts) {
        this.counts = counts;
    }

    /**
     * @param noted readings and draws in order
     * @param counts whether what a supply gave counts, given the reading of the bottle after it
     */
    static List<Part> of(List<Noted> noted, BiPredicate<CylinderId, Noted> counts) {
        FillParts all = new FillParts(counts);
        noted.forEach(all::take);
        all.courses.values().forEach(all::close);
        return all.parts;
    }

    private void take(Noted line) {
        FillId fill = line.fill();
        if (fill == null) {
            return;
        }
        Course course = courses.computeIfAbsent(fill, id -> new Course());
        GaugeReading reading = line.reading();
        if (line.cylinder() instanceof SupplyId && reading == null) {
            course.drawn.add(line.cylinder());
        } else if (line.cylinder() instanceof BottleId && reading != null) {
            read(course, line, reading);
        }
    }

    /** A reading without a draw before it, such as the last look at the bottle, belongs to what was before. */
    private void read(Course course, Noted line, GaugeReading reading) {
        boolean counted = course.drawn.stream().anyMatch(supply -> counts.test(supply, line));
        if (!course.drawn.isEmpty() && !counted) {
            close(course);
        } else if (counted && course.from == null) {
            course.from = course.latest;
        }
        course.drawn.clear();
        course.latest = reading;
    }

    private void close(Course course) {
        if (course.from != null && course.latest != null) {
            parts.add(new Part(course.from, course.latest));
        }
        course.from = null;
    }
}
