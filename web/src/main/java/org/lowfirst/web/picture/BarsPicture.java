package org.lowfirst.web.picture;

import gg.jte.Content;
import java.util.List;

/**
 * Draws a number for each of several things as bars from left to right, with the interval it may lie in where one is known.
 *
 * @param bars the things in order, at least one
 * @param words the few words in the picture
 */
public record BarsPicture(List<Bar> bars, Wording words) {

    private static final double WIDTH = 360;
    private static final double LEFT = 4;
    private static final double RIGHT = WIDTH - 72;
    private static final double TOP = 30;
    private static final double ROW = 46;
    private static final double LETTER = 7.2;
    private static final int SMALL = 14;

    public BarsPicture {
        bars = List.copyOf(bars);
    }

    /**
     * @param value at least zero
     * @param low lower end of the interval, {@code value} when none is known
     * @param high upper end
     * @param shown the number as it stands behind the bar
     * @param mark a second number to mark on the bar's line, negative for none
     * @param strong whether this is the one to look at
     */
    public record Bar(String name, double value, double low, double high, String shown, double mark, boolean strong) {}

    /**
     * @param description what the picture says, for whoever cannot see it
     * @param title what the bars are
     */
    public record Wording(String description, String title) {}

    /** The picture. */
    public Content draw() {
        Svg svg = Svg.described(WIDTH, TOP + ROW * bars.size() + 4, words.description());
        double most = bars.stream()
                .mapToDouble(bar -> Math.max(bar.high(), bar.mark()))
                .max()
                .orElse(1.0);
        svg.text("name", LEFT, 16, SMALL, "start", words.title());
        for (int i = 0; i < bars.size(); i++) {
            drawBar(svg, bars.get(i), TOP + ROW * i, most > 0 ? most : 1.0);
        }
        return svg.end();
    }

    private static void drawBar(Svg svg, Bar bar, double top, double most) {
        double end = x(bar.value(), most);
        svg.text(
                bar.strong() ? "strong" : "name",
                LEFT,
                top + 13,
                SMALL,
                "start",
                Ticks.shortened(bar.name(), (WIDTH - 8) * 7.5 / LETTER));
        svg.rect(bar.strong() ? "gain" : "left", LEFT, top + 19, Math.max(1.5, end - LEFT), 16);
        if (bar.high() > bar.low()) {
            double y = top + 27;
            svg.line("outline", x(bar.low(), most), y, x(bar.high(), most), y);
            svg.line("outline", x(bar.low(), most), y - 5, x(bar.low(), most), y + 5);
            svg.line("outline", x(bar.high(), most), y - 5, x(bar.high(), most), y + 5);
        }
        if (bar.mark() >= 0) {
            svg.line("target", x(bar.mark(), most), top + 16, x(bar.mark(), most), top + 39);
        }
        double behind = Math.max(end, x(Math.max(bar.high(), bar.mark()), most));
        svg.text("strong", behind + 6, top + 32, SMALL, "start", bar.shown());
    }

    private static double x(double value, double most) {
        return LEFT + (RIGHT - LEFT) * Math.max(0.0, value) / most;
    }
}
