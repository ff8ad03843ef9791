package org.lowfirst.web.picture;

import gg.jte.Content;
import java.util.Locale;

/** Draws one cylinder with its level: the gauge reading as a part of the marked service pressure. */
public final class CylinderPicture {

    private static final double WIDTH = 64;
    private static final double HEIGHT = 132;
    private static final double LEFT = 9;
    private static final double RIGHT = 55;
    private static final double SHOULDER = 44;
    private static final double TOP = 26;
    private static final double BOTTOM = 126;

    private CylinderPicture() {}

    /**
     * The picture; the text beside it says the same.
     *
     * @param part reading / service pressure; drawn from 0 to 1, more is drawn as full
     */
    public static Content of(double part) {
        double level = BOTTOM - Math.max(0, Math.min(1, part)) * (BOTTOM - TOP);
        Svg svg = Svg.decorative(WIDTH, HEIGHT).line("pipe", 0, 3, WIDTH, 3).path("empty", outline(TOP));
        if (level < BOTTOM - 0.5) {
            svg.path("level", outline(level));
        }
        for (int quarter = 1; quarter < 4; quarter++) {
            double y = BOTTOM - quarter * (BOTTOM - TOP) / 4;
            svg.line("outline", RIGHT - 8, y, RIGHT, y);
        }
        return svg.path("outline", outline(TOP))
                .rect("dark", 29, 3, 6, 12)
                .rounded("dark", 22, 13, 20, 11, 3)
                .rect("dark", 28, 22, 8, 5)
                .end();
    }

    /** The body from the bottom up to {@code top}: straight sides below the shoulder, a quarter ellipse above. */
    private static String outline(double top) {
        double inset = top >= SHOULDER ? 0 : insetAt(top);
        String sides = top >= SHOULDER
                ? String.format(Locale.ROOT, "V%.1f H%.1f V", top, RIGHT)
                : String.format(
                        Locale.ROOT,
                        "V%.1f A18 18 0 0 1 %.1f %.1f H%.1f A18 18 0 0 1 %.1f %.1f V",
                        SHOULDER,
                        LEFT + inset,
                        top,
                        RIGHT - inset,
                        RIGHT,
                        SHOULDER);
        return String.format(Locale.ROOT, "M%.1f %.1f ", LEFT, BOTTOM - 6)
                + sides
                + String.format(
                        Locale.ROOT,
                        "%.1f A6 6 0 0 1 %.1f %.1f H%.1f A6 6 0 0 1 %.1f %.1f Z",
                        BOTTOM - 6,
                        RIGHT - 6,
                        BOTTOM,
                        LEFT + 6,
                        LEFT,
                        BOTTOM - 6);
    }

    /** How far the shoulder, a quarter circle of radius 18, is in from the side at height {@code y}. */
    private static double insetAt(double y) {
        double up = SHOULDER - y;
        return 18 - Math.sqrt(Math.max(0, 18 * 18 - up * up));
    }
}
