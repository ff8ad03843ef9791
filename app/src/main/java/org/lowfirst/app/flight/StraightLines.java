package org.lowfirst.app.flight;

import java.util.ArrayList;
import java.util.List;

/** Straight lines through some fixes of a track that pass all others within a given height. */
final class StraightLines {

    private StraightLines() {}

    /**
     * The fixes the lines go through, in one pass: a line is drawn out as long as one slope passes every fix on the way.
     *
     * @param within_m most height between a fix that is left out and the line [m]
     */
    static List<Fix> through(List<Fix> fixes, double within_m) {
        List<Fix> kept = new ArrayList<>();
        Fix start = fixes.get(0);
        kept.add(start);
        double least = Double.NEGATIVE_INFINITY;
        double most = Double.POSITIVE_INFINITY;
        Fix before = start;
        for (Fix fix : fixes.subList(1, fixes.size())) {
            double slope = slope(start, fix, 0.0);
            if (slope < least || slope > most) {
                kept.add(before);
                start = before;
                least = Double.NEGATIVE_INFINITY;
                most = Double.POSITIVE_INFINITY;
            }
            least = Math.max(least, slope(start, fix, -within_m));
            most = Math.min(most, slope(start, fix, within_m));
            before = fix;
        }
        kept.add(before);
        return kept;
    }

    private static double slope(Fix from, Fix to, double higher_m) {
        return (to.metres() + higher_m - from.metres()) / (to.seconds() - from.seconds());
    }
}
