package org.lowfirst.web.picture;

import java.util.Locale;

/** Round numbers for the scale of a picture. */
final class Ticks {

    private static final double MOST = 5;
    private static final double LETTER = 7.5;

    private Ticks() {}

    /** Distance of the scale lines: 1, 2 or 5 times a power of ten, so that at most five are needed up to {@code highest}. */
    static double step(double highest) {
        double power = Math.pow(10, Math.floor(Math.log10(highest / MOST)));
        for (double round : new double[] {1, 2, 5, 10}) {
            if (round * power * MOST >= highest) {
                return round * power;
            }
        }
        throw new AssertionError("no round step for " + highest);
    }

    /** A number of a scale: whole, with thousands set apart by a narrow space, which every language reads alike. */
    static String label(double value) {
        return String.format(Locale.ROOT, "%,d", Math.round(value)).replace(',', '\u202f');
    }

    /** A name cut to what fits in {@code width} at the small size. */
    static String shortened(String name, double width) {
        int letters = (int) (width / LETTER);
        return name.length() <= letters ? name : name.substring(0, Math.max(1, letters - 1)) + "\u2026";
    }
}
