package org.lowfirst.app.flight;

import java.util.List;

/**
 * The altitude of a flight as it was recorded, in as few points as carry it.
 *
 * @param points at least two, by time, the first at 0
 * @param fixes how many fixes the file has
 * @param notes what a person should know about how they were read
 */
public record FlownTrack(List<Point> points, int fixes, List<String> notes) {

    public FlownTrack {
        points = List.copyOf(points);
        notes = List.copyOf(notes);
    }

    /**
     * @param seconds after the start
     * @param metres pressure altitude
     */
    public record Point(double seconds, double metres) {}
}
