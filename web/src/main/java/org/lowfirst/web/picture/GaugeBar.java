package org.lowfirst.web.picture;

import gg.jte.Content;

/** Draws what a bottle holds as a lying cylinder, with its group's floor and wish as lines across; the text beside says the same. */
public final class GaugeBar {

    private static final double WIDTH = 260;
    private static final double HEIGHT = 40;
    private static final double LEFT = 2;
    private static final double RIGHT = 240;
    private static final double TOP = 6;
    private static final double BOTTOM = 34;

    /** The wish stands at this part of the length. */
    private static final double WISH = 0.85;

    private GaugeBar() {}

    /**
     * @param reading in the unit of the others; below zero when nobody has read it
     * @param wish above zero
     */
    public static Content of(double reading, double floor, double wish) {
        Svg svg = Svg.decorative(WIDTH, HEIGHT)
                .rounded("empty", LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP, 10)
                .rect("dark", RIGHT, TOP + 9, 14, BOTTOM - TOP - 18);
        double level = at(reading, wish);
        if (reading >= 0 && level > LEFT) {
            svg.rounded("level", LEFT, TOP, level - LEFT, BOTTOM - TOP, 10);
        }
        return svg.rounded("outline", LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP, 10)
                .line("floor", at(floor, wish), 0, at(floor, wish), HEIGHT)
                .line("wish", at(wish, wish), 0, at(wish, wish), HEIGHT)
                .end();
    }

    private static double at(double pressure, double wish) {
        double part = wish > 0 ? WISH * pressure / wish : 0;
        return LEFT + Math.max(0, Math.min(1, part)) * (RIGHT - LEFT);
    }
}
