package org.lowfirst.web.picture;

import gg.jte.Content;
import java.util.List;

/**
 * Draws a session as a board: a row for each bottle, a column for each supply, and in each place the number of the stage and what
 * the bottle reads then. A line leads from stage to stage in the order to follow.
 *
 * @param rows the bottles as listed
 * @param supplies the supplies in rank order
 * @param cells the stages in order
 * @param words the few words in the picture
 */
public record SessionPicture(List<Row> rows, List<String> supplies, List<Cell> cells, Wording words) {

    private static final double WIDTH = 360;
    private static final double NAMES = 74;
    private static final double ENDS = 56;
    private static final double TOP = 44;
    private static final double ROW = 54;
    private static final int SMALL = 14;
    private static final double DOT = 13;

    public SessionPicture {
        rows = List.copyOf(rows);
        supplies = List.copyOf(supplies);
        cells = List.copyOf(cells);
    }

    /** A bottle, what it reads at the end, and whether it is ready then. */
    public record Row(String name, String ends, boolean ready) {}

    /**
     * A stage.
     *
     * @param number its place in the order, from 1
     * @param reading what the bottle reads after it
     * @param stop whether the bottle comes to its stop
     */
    public record Cell(String bottle, String supply, int number, String reading, boolean stop) {}

    /**
     * @param description what the picture says, for whoever cannot see it
     * @param ends title of the last column
     */
    public record Wording(String description, String ends) {}

    /** The picture. */
    public Content draw() {
        double height = TOP + ROW * rows.size() + 8;
        Svg svg = Svg.described(WIDTH, height, words.description());
        double column = (WIDTH - NAMES - ENDS) / Math.max(1, supplies.size());
        for (int s = 0; s < supplies.size(); s++) {
            double x = NAMES + column * (s + 0.5);
            if (s % 2 == 0) {
                svg.rect("band", x - column / 2, TOP - 26, column, height - TOP + 22);
            }
            svg.text("strong", x, TOP - 8, SMALL, "middle", Ticks.shortened(supplies.get(s), column));
        }
        svg.text("name", WIDTH - 4, TOP - 8, SMALL, "end", words.ends());
        for (int b = 0; b < rows.size(); b++) {
            drawRow(svg, rows.get(b), TOP + ROW * b);
        }
        drawOrder(svg, column);
        cells.forEach(cell -> drawCell(svg, cell, column));
        return svg.end();
    }

    private static void drawRow(Svg svg, Row row, double top) {
        svg.line("grid", 0, top, WIDTH, top);
        svg.text("strong", 0, top + 25, SMALL, "start", Ticks.shortened(row.name(), NAMES - 6));
        svg.text(row.ready() ? "strong" : "name", WIDTH - 4, top + 25, 16, "end", row.ends());
        if (!row.ready()) {
            svg.line("target", WIDTH - ENDS + 14, top + 32, WIDTH - 4, top + 32);
        }
    }

    private void drawOrder(Svg svg, double column) {
        StringBuilder path = new StringBuilder();
        for (Cell cell : cells) {
            path.append(path.isEmpty() ? 'M' : 'L')
                    .append(Svg.number(x(cell, column)))
                    .append(' ')
                    .append(Svg.number(y(cell)));
        }
        if (cells.size() > 1) {
            svg.path("carry", path.toString());
        }
    }

    private void drawCell(Svg svg, Cell cell, double column) {
        double x = x(cell, column);
        double y = y(cell);
        svg.rounded(cell.stop() ? "dark" : "left", x - DOT, y - DOT, 2 * DOT, 2 * DOT, cell.stop() ? 4 : DOT);
        svg.text(cell.stop() ? "rank-word" : "strong", x, y + 5, SMALL, "middle", Integer.toString(cell.number()));
        svg.text("halo", x, y + 29, SMALL, "middle", Ticks.shortened(cell.reading(), Math.max(38, column)));
    }

    private double x(Cell cell, double column) {
        return NAMES + column * (supplies.indexOf(cell.supply()) + 0.5);
    }

    private double y(Cell cell) {
        int row = 0;
        while (row < rows.size() - 1 && !rows.get(row).name().equals(cell.bottle())) {
            row++;
        }
        return TOP + ROW * row + 19;
    }
}
