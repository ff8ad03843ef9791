package org.lowfirst.planning.flight;

import java.util.ArrayList;
import java.util.List;

/** When a profile is above one altitude and at or below another. */
final class AltitudeBand {

    private AltitudeBand() {}

    /**
     * Spans of the profile above {@code above_m} and at or below {@code upTo_m}, joined where they touch.
     *
     * <p>On a level leg exactly at {@code above_m} the profile is not above it.
     */
    static List<Span> spans(Profile profile, double above_m, double upTo_m) {
        List<Span> found = new ArrayList<>();
        double start_s = 0.0;
        for (Leg leg : profile.legs()) {
            double length_s = leg.seconds();
            double from_m = leg.from().metres();
            double to_m = leg.to().metres();
            double first;
            double last;
            if (from_m == to_m) {
                boolean inside = from_m > above_m && from_m <= upTo_m;
                first = 0.0;
                last = inside ? 1.0 : 0.0;
            } else {
                double atAbove = (above_m - from_m) / (to_m - from_m);
                double atUpTo = (upTo_m - from_m) / (to_m - from_m);
                first = Math.max(0.0, Math.min(atAbove, atUpTo));
                last = Math.min(1.0, Math.max(atAbove, atUpTo));
            }
            if (last > first) {
                append(found, new Span(start_s + first * length_s, start_s + last * length_s));
            }
            start_s += length_s;
        }
        return List.copyOf(found);
    }

    private static void append(List<Span> spans, Span next) {
        if (!spans.isEmpty() && spans.get(spans.size() - 1).toSeconds() >= next.fromSeconds() - 1e-6) {
            Span before = spans.remove(spans.size() - 1);
            spans.add(new Span(before.fromSeconds(), next.toSeconds()));
        } else {
            spans.add(next);
        }
    }
}
