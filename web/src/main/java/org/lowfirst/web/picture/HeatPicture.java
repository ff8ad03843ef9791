package org.lowfirst.web.picture;

import gg.jte.Content;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Draws a fill against time: above, what the bottle's gauge shows; below, how warm its gas gets. Stages are bands with the name
 * of the open supply.
 *
 * @param moments the fill from start to end, at least two, by time
 * @param bands the stages in order
 * @param stop the reading to stop at, in the unit of the moments
 * @param words the few words in the picture
 */
public record HeatPicture(List<Moment> moments, List<Band> bands, double stop, Wording words) {

    private static final double WIDTH = 340;
    private static final double LEFT = 48;
    private static final double RIGHT = WIDTH - 8;
    private static final int SMALL = 14;
    private static final Panel GAUGE = new Panel(46, 176);
    private static final Panel HEAT = new Panel(216, 306);
    private static final double HEIGHT = 350;

    public HeatPicture {
        moments = List.copyOf(moments);
        bands = List.copyOf(bands);
        if (moments.size() < 2) {
            throw new IllegalArgumentException("The moments (" + moments.size() + ") must be at least 2.");
        }
    }

    /**
     * @param minutes since the start
     * @param gauge what the bottle's gauge shows
     * @param gas temperature of the gas in the bottle
     */
    public record Moment(double minutes, double gauge, double gas) {}

    /** A stage: the open supply, from and to in minutes. */
    public record Band(String supply, double from, double to) {}

    /**
     * @param description what the picture says, for whoever cannot see it
     * @param gauge title of the upper panel, e.g. "bottle gauge, bar"
     * @param gas title of the lower panel, e.g. "gas in the bottle, C"
     * @param stop label of the stop line
     * @param minutes label of the time scale
     */
    public record Wording(String description, String gauge, String gas, String stop, String minutes) {}

    private record Panel(double top, double floor) {
        double y(double value, double lowest, double highest) {
            return floor - (floor - top) * (value - lowest) / (highest - lowest);
        }
    }

    /** The picture. */
    public Content draw() {
        Svg svg = Svg.described(WIDTH, HEIGHT, words.description());
        double end = moments.get(moments.size() - 1).minutes();
        for (int i = 0; i < bands.size(); i++) {
            drawBand(svg, bands.get(i), i, end);
        }
        drawPanel(svg, GAUGE, words.gauge(), 0.0, Math.max(stop, most(Moment::gauge)), Moment::gauge, "rise", end);
        double coolest = moments.stream().mapToDouble(Moment::gas).min().orElse(0.0);
        drawPanel(svg, HEAT, words.gas(), coolest, most(Moment::gas), Moment::gas, "heat", end);
        drawStop(svg);
        drawTime(svg, end);
        return svg.end();
    }

    private double most(ToDoubleFunction<Moment> value) {
        return moments.stream().mapToDouble(value).max().orElse(1.0);
    }

    private static void drawBand(Svg svg, Band band, int number, double end) {
        double from = x(band.from(), end);
        double to = x(band.to(), end);
        if (number % 2 == 0) {
            svg.rect("band", from, GAUGE.top() - 20, to - from, HEAT.floor() - GAUGE.top() + 20);
        }
        if (to - from >= 14) {
            svg.text(
                    "strong",
                    (from + to) / 2,
                    GAUGE.top() - 6,
                    SMALL,
                    "middle",
                    Ticks.shortened(band.supply(), to - from));
        }
    }

    private void drawPanel(
            Svg svg,
            Panel panel,
            String title,
            double lowest,
            double highest,
            ToDoubleFunction<Moment> value,
            String looks,
            double end) {
        double step = Ticks.step(Math.max(1.0, highest - lowest));
        double floor = Math.floor(lowest / step) * step;
        double top = Math.max(floor + step, Math.ceil(highest / step) * step);
        for (double tick = floor; tick <= top + step / 2; tick += step) {
            svg.line("grid", LEFT, panel.y(tick, floor, top), RIGHT, panel.y(tick, floor, top));
            svg.text("scale", LEFT - 8, panel.y(tick, floor, top) + 5, SMALL, "end", Ticks.label(tick));
        }
        svg.text("name", LEFT, panel.top() - 24, SMALL, "start", title);
        StringBuilder path = new StringBuilder();
        for (Moment moment : moments) {
            path.append(path.isEmpty() ? 'M' : 'L')
                    .append(Svg.number(x(moment.minutes(), end)))
                    .append(' ')
                    .append(Svg.number(panel.y(value.applyAsDouble(moment), floor, top)));
        }
        svg.path(looks, path.toString());
    }

    private void drawStop(Svg svg) {
        double highest = Math.max(stop, most(Moment::gauge));
        double step = Ticks.step(Math.max(1.0, highest));
        double y = GAUGE.y(stop, 0.0, Math.max(step, Math.ceil(highest / step) * step));
        svg.line("target", LEFT, y, RIGHT, y);
        svg.text("target-word", LEFT + 4, y + 17, SMALL, "start", words.stop());
    }

    private void drawTime(Svg svg, double end) {
        double step = Math.max(1.0, Ticks.step(Math.max(1.0, end)));
        for (double tick = 0; tick <= end; tick += step) {
            svg.text("scale", x(tick, end), HEAT.floor() + 20, SMALL, "middle", Ticks.label(tick));
        }
        svg.text("name", (LEFT + RIGHT) / 2, HEIGHT - 6, SMALL, "middle", words.minutes());
    }

    private static double x(double minutes, double end) {
        return LEFT + (RIGHT - LEFT) * minutes / end;
    }
}
