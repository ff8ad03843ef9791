package org.lowfirst.web.picture;

import gg.jte.Content;
import java.util.List;
import java.util.Locale;

/**
 * Draws how supplies stand in a row: each with its valve on the line, an interconnect between neighbours, and at the end the
 * hose with the transfer valve and the bottle. Drawn from top to bottom, so that it can be read on a narrow screen.
 *
 * @param places the supplies, farthest from the bottle first
 * @param words what is written into it
 */
public record ArrangementPicture(List<Place> places, Wording words) {

    private static final double WIDTH = 340;
    private static final double PITCH = 84;
    private static final double TOP = 12;
    private static final double LINE_X = 262;
    private static final double LEFT = 44;
    private static final double NECK = 196;
    private static final double TALL = 44;

    public ArrangementPicture {
        places = List.copyOf(places);
    }

    /**
     * One supply in its place.
     *
     * @param rank its rank
     * @param name its name
     * @param part reading / service pressure, drawn from 0 to 1
     * @param out whether it must not be opened
     */
    public record Place(int rank, String name, double part, boolean out) {}

    /**
     * @param description what the picture shows, for whoever cannot see it
     * @param interconnect name of the line between neighbours, its number follows
     * @param transfer name of the transfer valve
     * @param bottle name of the bottle
     * @param out word for a supply that must not be opened
     */
    public record Wording(String description, String interconnect, String transfer, String bottle, String out) {}

    public Content draw() {
        int count = places.size();
        double height = TOP + Math.max(0, count - 1) * PITCH + TALL / 2 + 144;
        Svg svg = Svg.described(WIDTH, height, words.description());
        for (int i = 0; i < count; i++) {
            double middle = TOP + i * PITCH + TALL / 2;
            if (i + 1 < count) {
                interconnect(svg, middle, i + 1);
            }
            supply(svg, places.get(i), middle);
        }
        if (count > 0) {
            end(svg, TOP + (count - 1) * PITCH + TALL / 2);
        }
        return svg.end();
    }

    private void interconnect(Svg svg, double middle, int number) {
        svg.line("pipe", LINE_X, middle + 7, LINE_X, middle + PITCH - 7);
        double y = middle + PITCH / 2;
        svg.rounded("plate", LEFT + 62, y - 12, LINE_X - LEFT - 76, 24, 6);
        svg.text("", LINE_X - 22, y + 5, 15, "end", words.interconnect() + " " + number);
        svg.line("outline", LINE_X - 14, y, LINE_X - 2, y);
    }

    private void supply(Svg svg, Place place, double middle) {
        double top = middle - TALL / 2;
        double full = NECK - LEFT - 8;
        double level = Math.max(0, Math.min(1, place.part())) * full;
        svg.rounded("empty outlined", LEFT, top, NECK - LEFT, TALL, 16);
        if (level > 6) {
            svg.rounded("level", LEFT + 4, top + 4, level, TALL - 8, Math.min(12, level / 2));
        }
        svg.rounded("outline", LEFT, top, NECK - LEFT, TALL, 16);
        svg.rect("dark", NECK, middle - 5, 10, 10);
        svg.line("pipe", NECK + 10, middle, LINE_X, middle);
        valve(svg, NECK + 34, middle, place.out());
        svg.path("dark", circle(LINE_X, middle, 6));
        svg.path("dark", circle(20, middle, 16));
        svg.text("rank-word", 20, middle + 6, 17, "middle", Integer.toString(place.rank()));
        svg.rounded(
                "plate",
                LEFT + 12,
                middle - 13,
                Math.min(NECK - LEFT - 24, 20 + 10 * place.name().length()),
                26,
                6);
        svg.text("strong", LEFT + 20, middle + 6, 17, "start", place.name());
        if (place.out()) {
            svg.text("target-word", LINE_X + 10, middle - 10, 14, "start", words.out());
        }
    }

    /** Two triangles tip to tip; barred when the valve must stay shut. */
    private static void valve(Svg svg, double x, double y, boolean out) {
        svg.path(
                "valve",
                String.format(
                        Locale.ROOT,
                        "M%.1f %.1f L%.1f %.1f L%.1f %.1f L%.1f %.1f Z",
                        x - 12,
                        y - 9,
                        x + 12,
                        y + 9,
                        x + 12,
                        y - 9,
                        x - 12,
                        y + 9));
        svg.line("outline", x, y, x, y - 13);
        svg.line("outline", x - 7, y - 13, x + 7, y - 13);
        if (out) {
            svg.line("target", x - 14, y + 14, x + 14, y - 14);
        }
    }

    private void end(Svg svg, double last) {
        double transfer = last + 56;
        double bottle = last + 88;
        svg.line("pipe", LINE_X, last + 6, LINE_X, bottle);
        svg.path(
                "valve",
                String.format(
                        Locale.ROOT,
                        "M%.1f %.1f L%.1f %.1f L%.1f %.1f L%.1f %.1f Z",
                        LINE_X - 9,
                        transfer - 12,
                        LINE_X + 9,
                        transfer + 12,
                        LINE_X - 9,
                        transfer + 12,
                        LINE_X + 9,
                        transfer - 12));
        svg.line("outline", LINE_X, transfer, LINE_X + 14, transfer);
        svg.line("outline", LINE_X + 14, transfer - 7, LINE_X + 14, transfer + 7);
        svg.text("strong", LINE_X - 20, transfer + 5, 16, "end", words.transfer());
        svg.rect("dark", LINE_X - 5, bottle, 10, 8);
        svg.rounded("bottle", LINE_X - 24, bottle + 8, 48, 40, 14);
        svg.text("strong", LINE_X - 34, bottle + 34, 16, "end", words.bottle());
    }

    private static String circle(double x, double y, double r) {
        return String.format(
                Locale.ROOT,
                "M%.1f %.1f a%.1f %.1f 0 1 0 %.1f 0 a%.1f %.1f 0 1 0 %.1f 0 Z",
                x - r,
                y,
                r,
                r,
                2 * r,
                r,
                r,
                -2 * r);
    }
}
