package org.lowfirst.web.picture;

import gg.jte.Content;
import java.util.List;
import java.util.Locale;
import org.lowfirst.gas.Digits;

/**
 * Draws numbers against a count (1, 2, 3, ...): one curve for each way, told apart by dash and by the shape of its points, with the
 * interval of each point where one is known.
 *
 * @param curves at most five and a limit, at least one with a point
 * @param whole whether the scale reaches to the largest number; if not, one far above the least stands at the upper edge
 * @param words the few words in the picture
 */
public record CurvesPicture(List<Curve> curves, boolean whole, Wording words) {

    private static final double WIDTH = 360;
    private static final double LEFT = 46;
    private static final double RIGHT = WIDTH - 12;
    private static final double TOP = 34;
    private static final double FLOOR = 210;
    private static final double KEY = 24;
    private static final int SMALL = 14;
    private static final double DOT = 5;
    /** What is more times the least than this is shown at the upper edge, with its number. */
    private static final double FARTHEST = 2.5;

    private static final int SHAPES = 5;

    public CurvesPicture {
        curves = List.copyOf(curves);
    }

    /**
     * @param looks 0 to 4 for a way, its shape and dash; negative for a limit that is only drawn as a line
     * @param points by count
     */
    public record Curve(String name, int looks, List<Point> points) {

        public Curve {
            points = List.copyOf(points);
        }
    }

    /** A number at a count, and from where to where it may lie. */
    public record Point(int count, double value, double low, double high) {}

    /**
     * @param description what the picture says, for whoever cannot see it
     * @param title title of the upward scale
     * @param count title of the other
     * @param language how decimals of the scale are written
     */
    public record Wording(String description, String title, String count, Locale language) {}

    /** The picture. */
    public Content draw() {
        Svg svg = Svg.described(WIDTH, FLOOR + 52 + KEY * curves.size(), words.description());
        double most = curves.stream()
                .flatMap(curve -> curve.points().stream())
                .mapToDouble(Point::high)
                .max()
                .orElse(1.0);
        double least = curves.stream()
                .flatMap(curve -> curve.points().stream())
                .mapToDouble(Point::value)
                .min()
                .orElse(1.0);
        double shown = whole || least <= 0.0 ? most : Math.min(most, FARTHEST * least);
        double step = Ticks.step(Math.max(shown, 1e-3));
        double top = Math.max(step, Math.ceil(shown / step - 1e-9) * step);
        for (double tick = 0; tick <= top + step / 2; tick += step) {
            svg.line("grid", LEFT, y(tick, top), RIGHT, y(tick, top));
            svg.text("scale", LEFT - 8, y(tick, top) + 5, SMALL, "end", label(tick, step));
        }
        svg.text("name", 0, 16, SMALL, "start", words.title());
        for (int count = least(); count <= largest(); count++) {
            svg.text("scale", x(count), FLOOR + 20, SMALL, "middle", Integer.toString(count));
        }
        svg.text("name", (LEFT + RIGHT) / 2, FLOOR + 42, SMALL, "middle", words.count());
        for (int i = 0; i < curves.size(); i++) {
            drawCurve(svg, curves.get(i), top);
            drawKey(svg, curves.get(i), FLOOR + 62 + KEY * i);
        }
        return svg.end();
    }

    private void drawCurve(Svg svg, Curve curve, double top) {
        StringBuilder path = new StringBuilder();
        for (Point point : curve.points()) {
            path.append(path.isEmpty() ? 'M' : 'L')
                    .append(Svg.number(x(point.count())))
                    .append(' ')
                    .append(Svg.number(y(point.value(), top)));
        }
        if (curve.points().size() > 1) {
            svg.path(looks(curve), path.toString());
        }
        for (Point point : curve.points()) {
            if (point.high() > point.low() && point.value() <= top) {
                svg.line("outline", x(point.count()), y(point.low(), top), x(point.count()), y(point.high(), top));
            }
            if (curve.looks() >= 0) {
                dot(svg, curve.looks(), x(point.count()), y(point.value(), top));
            }
            if (point.value() > top) {
                String beyond = "\u2191 " + Ticks.label(point.value());
                svg.text("halo", x(point.count()) + DOT + 3, TOP + 14, SMALL, "start", beyond);
            }
        }
    }

    private static void drawKey(Svg svg, Curve curve, double y) {
        svg.path(looks(curve), "M4 " + Svg.number(y) + "L36 " + Svg.number(y));
        if (curve.looks() >= 0) {
            dot(svg, curve.looks(), 20, y);
        }
        svg.text("name", 46, y + 5, SMALL, "start", Ticks.shortened(curve.name(), WIDTH - 50));
    }

    private static String looks(Curve curve) {
        return curve.looks() < 0 ? "target" : "curve curve-" + curve.looks() % SHAPES;
    }

    private static void dot(Svg svg, int looks, double x, double y) {
        switch (looks % SHAPES) {
            case 0 -> svg.rounded("dark", x - DOT, y - DOT, 2 * DOT, 2 * DOT, DOT);
            case 1 -> svg.rect("left", x - DOT, y - DOT, 2 * DOT, 2 * DOT);
            case 2 -> svg.path("gain", triangle(x, y));
            case 3 -> svg.path("given", triangle(x, y));
            default -> svg.path("dark", diamond(x, y));
        }
    }

    private static String diamond(double x, double y) {
        double reach = DOT + 1.0;
        return "M" + Svg.number(x) + ' ' + Svg.number(y - reach) + 'L' + Svg.number(x + reach) + ' ' + Svg.number(y)
                + 'L' + Svg.number(x) + ' ' + Svg.number(y + reach) + 'L' + Svg.number(x - reach) + ' ' + Svg.number(y)
                + 'Z';
    }

    private static String triangle(double x, double y) {
        return "M" + Svg.number(x) + ' ' + Svg.number(y - DOT - 1) + 'L' + Svg.number(x + DOT + 1) + ' '
                + Svg.number(y + DOT) + 'L' + Svg.number(x - DOT - 1) + ' ' + Svg.number(y + DOT) + 'Z';
    }

    private String label(double tick, double step) {
        return step >= 1 ? Ticks.label(tick) : Digits.in(words.language()).of(tick, step >= 0.1 ? 1 : 2);
    }

    private int least() {
        return curves.stream()
                .flatMap(curve -> curve.points().stream())
                .mapToInt(Point::count)
                .min()
                .orElse(1);
    }

    private int largest() {
        return curves.stream()
                .flatMap(curve -> curve.points().stream())
                .mapToInt(Point::count)
                .max()
                .orElse(1);
    }

    private double x(int count) {
        int span = largest() - least();
        double inset = 14;
        return span == 0 ? (LEFT + RIGHT) / 2 : LEFT + inset + (RIGHT - LEFT - 2 * inset) * (count - least()) / span;
    }

    private static double y(double value, double top) {
        return FLOOR - (FLOOR - TOP) * Math.min(value, top) / top;
    }
}
