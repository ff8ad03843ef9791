package org.lowfirst.app.flight;

import java.util.Locale;

/** Times of a flight as h:mm after its start. */
final class HoursAndMinutes {

    private HoursAndMinutes() {}

    /** The full minute at or before a moment: for what has to be done by then. */
    static String before(double seconds) {
        return text((long) Math.floor(seconds / 60.0 + 1e-6));
    }

    /** The full minute at or after a moment. */
    static String after(double seconds) {
        return text((long) Math.ceil(seconds / 60.0 - 1e-6));
    }

    /** The nearest full minute. */
    static String near(double seconds) {
        return text(Math.round(seconds / 60.0));
    }

    private static String text(long minutes) {
        return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
    }
}
