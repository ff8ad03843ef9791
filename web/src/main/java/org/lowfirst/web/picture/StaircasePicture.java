package org.lowfirst.web.picture;

import gg.jte.Content;
import java.util.List;

/**
 * Draws one fill as a staircase: the bottle rises stage by stage, each supply falls to meet it, the stop is a line across.
 *
 * @param unit symbol of the unit of every number
 * @param treads the stages in order
 * @param stop the reading to reach
 * @param words the few words in the picture
 */
public record StaircasePicture(String unit, List<Tread> treads, double stop, Wording words) {

    private static final double WIDTH = 340;
    private static final double HEIGHT = 292;
    private static final double LEFT = 44;
    private static final double RIGHT = WIDTH - 4;
    private static final double TOP = 26;
    private static final double FLOOR = 244;
    private static final int SMALL = 14;

    public StaircasePicture {
        treads = List.copyOf(treads);
    }

    /** Where a stage stands in a fill under way. */
    public enum When {
        PAST,
        NOW,
        LATER
    }

    /**
     * One stage: both gauges before and after, in {@link #unit}.
     *
     * @param rank rank of the supply before the fill
     */
    public record Tread(
            int rank,
            String supply,
            double bottleBefore,
            double bottleAfter,
            double supplyBefore,
            double supplyAfter,
            When when) {}

    /**
     * @param description what the picture says, for whoever cannot see it
     * @param stop the line's label, e.g. "stop at 150 bar"
     * @param now label over the stage under way
     */
    public record Wording(String description, String stop, String now) {}

    /** The picture. */
    public Content draw() {
        Svg svg = Svg.described(WIDTH, HEIGHT, words.description());
        double step = Ticks.step(highest());
        double top = Math.ceil(highest() / step) * step;
        double column = (RIGHT - LEFT) / Math.max(1, treads.size());
        for (int i = 0; i < treads.size(); i++) {
            if (treads.get(i).when() == When.NOW) {
                svg.rounded("here", LEFT + i * column, 2, column, HEIGHT - 4, 8);
                svg.text("here-word", LEFT + (i + 0.5) * column, 17, SMALL, "middle", words.now());
            }
        }
        for (double tick = 0; tick <= top + step / 2; tick += step) {
            svg.line("grid", LEFT, y(tick, top), RIGHT, y(tick, top));
            svg.text("scale", LEFT - 8, y(tick, top) + 5, SMALL, "end", Ticks.label(tick));
        }
        for (int i = 0; i < treads.size(); i++) {
            drawTread(svg, treads.get(i), LEFT + i * column, column, top, i + 1 < treads.size());
        }
        svg.line("target", LEFT, y(stop, top), RIGHT, y(stop, top));
        svg.text("target-word", LEFT + 4, y(stop, top) - 6, SMALL, "start", words.stop());
        return svg.end();
    }

    private static void drawTread(Svg svg, Tread tread, double x, double column, double top, boolean more) {
        double bar = Math.min(36, (column - 12) / 2);
        double bottle = x + (column - 2 * bar - 4) / 2;
        double supply = bottle + bar + 4;
        String later = tread.when() == When.LATER ? " later" : "";
        double floor = y(0, top);
        double before = y(tread.bottleBefore(), top);
        double after = y(tread.bottleAfter(), top);
        svg.rect("had" + later, bottle, before, bar, floor - before);
        svg.rect("gain" + later, bottle, after, bar, Math.max(1.5, before - after));
        double full = y(tread.supplyBefore(), top);
        double left = y(tread.supplyAfter(), top);
        svg.rect("given" + later, supply, full, bar, Math.max(1.5, left - full));
        svg.rect("left" + later, supply, left, bar, floor - left);
        if (more) {
            svg.line("carry", bottle + bar, after, bottle + column, after);
        }
        svg.text("strong", bottle + bar / 2, after - 6, SMALL + 1, "middle", Ticks.label(tread.bottleAfter()));
        if (bar >= 24) {
            svg.text(
                    "fall",
                    supply + bar / 2,
                    Math.max(left + 17, full + 17),
                    SMALL,
                    "middle",
                    Ticks.label(tread.supplyAfter()));
        }
        svg.rounded("dark", supply + bar / 2 - 11, FLOOR + 6, 22, 20, 10);
        svg.text("rank-word", supply + bar / 2, FLOOR + 21, SMALL, "middle", Integer.toString(tread.rank()));
        svg.text("name", x + column / 2, FLOOR + 42, SMALL, "middle", Ticks.shortened(tread.supply(), column));
    }

    private double highest() {
        double highest = stop;
        for (Tread tread : treads) {
            highest = Math.max(highest, tread.supplyBefore());
        }
        return Math.max(1, highest);
    }

    private static double y(double value, double top) {
        return TOP + (FLOOR - TOP) * (1 - value / top);
    }
}
