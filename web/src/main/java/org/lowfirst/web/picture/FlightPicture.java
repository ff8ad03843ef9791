package org.lowfirst.web.picture;

import gg.jte.Content;
import java.util.List;

/**
 * Draws the altitude of a flight against time, and below it when each rule text asks for oxygen and when a device is off although
 * it does.
 *
 * @param points the profile, by time, at least two
 * @param rows one for each duty
 * @param marked moment of the mark [min], negative for none
 * @param words the few words in the picture
 */
public record FlightPicture(List<Point> points, List<Row> rows, double marked, Wording words) {

    private static final double WIDTH = 360;
    private static final double LEFT = 62;
    private static final double RIGHT = WIDTH - 10;
    private static final double TOP = 40;
    private static final double FLOOR = 180;
    private static final double ROW = 44;
    private static final int SMALL = 14;

    public FlightPicture {
        points = List.copyOf(points);
        rows = List.copyOf(rows);
    }

    /** @param altitude in the unit of the page */
    public record Point(double minutes, double altitude) {}

    /**
     * A duty and when it holds.
     *
     * @param spans when it is asked
     * @param gaps when it is asked and not done
     */
    public record Row(String name, List<Span> spans, List<Span> gaps) {

        public Row {
            spans = List.copyOf(spans);
            gaps = List.copyOf(gaps);
        }
    }

    /** From and to in minutes. */
    public record Span(double from, double to) {}

    /**
     * @param description what the picture says, for whoever cannot see it
     * @param title title of the upward scale
     * @param time title of the time scale
     * @param mark word at the marked moment
     */
    public record Wording(String description, String title, String time, String mark) {}

    /** The picture. */
    public Content draw() {
        double height = FLOOR + 50 + ROW * rows.size();
        Svg svg = Svg.described(WIDTH, height, words.description());
        double most = points.stream().mapToDouble(Point::altitude).max().orElse(1.0);
        double step = Ticks.step(Math.max(1.0, most));
        double top = Math.max(step, Math.ceil(most / step) * step);
        for (double tick = 0; tick <= top + step / 2; tick += step) {
            svg.line("grid", LEFT, y(tick, top), RIGHT, y(tick, top));
            svg.text("scale", LEFT - 6, y(tick, top) + 5, SMALL, "end", Ticks.label(tick));
        }
        svg.text("name", 0, 16, SMALL, "start", words.title());
        StringBuilder path = new StringBuilder();
        for (Point point : points) {
            path.append(path.isEmpty() ? 'M' : 'L')
                    .append(Svg.number(x(point.minutes())))
                    .append(' ')
                    .append(Svg.number(y(Math.max(0.0, point.altitude()), top)));
        }
        svg.path("rise", path.toString());
        if (marked >= 0 && marked <= end()) {
            svg.line("target", x(marked), TOP - 12, x(marked), FLOOR);
            boolean right = x(marked) > (LEFT + RIGHT) / 2;
            svg.text("target-word", x(marked) + (right ? -5 : 5), TOP, SMALL, right ? "end" : "start", words.mark());
        }
        drawTime(svg);
        for (int i = 0; i < rows.size(); i++) {
            drawRow(svg, rows.get(i), FLOOR + 50 + ROW * i);
        }
        return svg.end();
    }

    private void drawTime(Svg svg) {
        double step = end() > 480 ? 120 : end() > 180 ? 60 : end() > 60 ? 30 : 10;
        for (double tick = 0; tick <= end() + 1e-9; tick += step) {
            long minutes = Math.round(tick);
            String label = minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
            svg.line("grid", x(tick), FLOOR, x(tick), FLOOR + 5);
            svg.text("scale", x(tick), FLOOR + 20, SMALL, "middle", label);
        }
        svg.text("name", 0, FLOOR + 20, SMALL, "start", words.time());
    }

    private void drawRow(Svg svg, Row row, double top) {
        svg.text("name", 0, top + 8, SMALL, "start", Ticks.shortened(row.name(), WIDTH));
        svg.line("grid", LEFT, top + 22, RIGHT, top + 22);
        for (Span span : row.spans()) {
            svg.rect("gain", x(span.from()), top + 15, Math.max(2, x(span.to()) - x(span.from())), 14);
        }
        for (Span gap : row.gaps()) {
            svg.rect("gap", x(gap.from()), top + 13, Math.max(2, x(gap.to()) - x(gap.from())), 18);
        }
    }

    private double end() {
        return Math.max(1.0, points.get(points.size() - 1).minutes());
    }

    private double x(double minutes) {
        return LEFT + (RIGHT - LEFT) * minutes / end();
    }

    private static double y(double altitude, double top) {
        return FLOOR - (FLOOR - TOP) * altitude / top;
    }
}
