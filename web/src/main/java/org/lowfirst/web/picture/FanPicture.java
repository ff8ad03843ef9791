package org.lowfirst.web.picture;

import gg.jte.Content;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Draws something that becomes less certain with time: a wide band, a narrow one in it, and the middle; a mark at one day.
 *
 * @param days the days in order, at least two
 * @param marked day with the mark; negative for none
 * @param words the few words in the picture
 */
public record FanPicture(List<Day> days, double marked, Wording words) {

    private static final double WIDTH = 360;
    private static final double HEIGHT = 260;
    private static final double LEFT = 40;
    private static final double RIGHT = WIDTH - 12;
    private static final double TOP = 44;
    private static final double FLOOR = 214;
    private static final int SMALL = 14;

    public FanPicture {
        days = List.copyOf(days);
        if (days.size() < 2) {
            throw new IllegalArgumentException("The days (" + days.size() + ") must be at least 2.");
        }
    }

    /**
     * @param day counted from today
     * @param label how the scale names it; empty for no label
     */
    public record Day(
            double day, String label, double low90, double low50, double middle, double high50, double high90) {}

    /**
     * @param description what the picture says, for whoever cannot see it
     * @param title title of the upward scale
     * @param mark word at the marked day
     */
    public record Wording(String description, String title, String mark) {}

    /** The picture. */
    public Content draw() {
        Svg svg = Svg.described(WIDTH, HEIGHT, words.description());
        double most = Math.max(1.0, days.stream().mapToDouble(Day::high90).max().orElse(1.0));
        double step = Math.max(1.0, Ticks.step(most));
        double top = Math.max(step, Math.ceil(most / step) * step);
        for (double tick = 0; tick <= top + step / 2; tick += step) {
            svg.line("grid", LEFT, y(tick, top), RIGHT, y(tick, top));
            svg.text("scale", LEFT - 8, y(tick, top) + 5, SMALL, "end", Ticks.label(tick));
        }
        svg.text("name", 0, 18, SMALL, "start", words.title());
        svg.path("fan-wide", area(Day::low90, Day::high90, top));
        svg.path("fan-narrow", area(Day::low50, Day::high50, top));
        svg.path("fan-middle", line(Day::middle, top));
        if (marked >= 0 && marked <= end()) {
            svg.line("target", x(marked), TOP - 12, x(marked), FLOOR);
            boolean right = x(marked) > (LEFT + RIGHT) / 2;
            svg.text(
                    "target-word", x(marked) + (right ? -6 : 6), TOP - 2, SMALL, right ? "end" : "start", words.mark());
        }
        for (Day day : days) {
            if (!day.label().isEmpty()) {
                svg.line("grid", x(day.day()), FLOOR, x(day.day()), FLOOR + 6);
                svg.text("scale", x(day.day()), FLOOR + 24, SMALL, "middle", day.label());
            }
        }
        return svg.end();
    }

    private String area(ToDoubleFunction<Day> low, ToDoubleFunction<Day> high, double top) {
        StringBuilder path = new StringBuilder(line(high, top));
        for (int i = days.size() - 1; i >= 0; i--) {
            point(path, 'L', days.get(i), low, top);
        }
        return path.append('Z').toString();
    }

    private String line(ToDoubleFunction<Day> value, double top) {
        StringBuilder path = new StringBuilder();
        days.forEach(day -> point(path, path.isEmpty() ? 'M' : 'L', day, value, top));
        return path.toString();
    }

    private void point(StringBuilder path, char command, Day day, ToDoubleFunction<Day> value, double top) {
        path.append(command)
                .append(Svg.number(x(day.day())))
                .append(' ')
                .append(Svg.number(y(value.applyAsDouble(day), top)));
    }

    private double end() {
        return Math.max(1.0, days.get(days.size() - 1).day());
    }

    private double x(double day) {
        return LEFT + (RIGHT - LEFT) * day / end();
    }

    private static double y(double value, double top) {
        return FLOOR - (FLOOR - TOP) * value / top;
    }
}
