package org.lowfirst.app.paper;

import java.util.Arrays;
import java.util.List;

/** Pieces that several papers share. */
final class Parts {

    /** Cautions for every filler, in the order to read them (common practice, no source). */
    private static final List<String> CAUTIONS = List.of(
            "caution.slowly",
            "caution.one-supply",
            "caution.clean",
            "caution.marking",
            "caution.ignition",
            "caution.air",
            "caution.second-person");

    private Parts() {}

    /** A title and, below it, what it is about. */
    static Node title(String title, String about) {
        return Node.of("div", "title").add(Node.saying("h1", title), Node.saying("p", about));
    }

    /** A row of a table's head. */
    static Node head(String... cells) {
        Node row = Node.of("tr");
        Arrays.stream(cells).forEach(cell -> row.add(Node.saying("th", cell)));
        return Node.of("thead").add(row);
    }

    static Node row(Node... cells) {
        return Node.of("tr").add(cells);
    }

    static Node cell(String text) {
        return Node.saying("td", text);
    }

    /** A cell with a number, set to the right. */
    static Node figure(String text) {
        return Node.saying("td", "figure", text);
    }

    static Node strong(String text) {
        return Node.of("td").add(Node.saying("b", text));
    }

    /** A cell with small print under its text. */
    static Node cell(String text, String below) {
        return below.isEmpty()
                ? strong(text)
                : strong(text).add(Node.of("br")).add(Node.saying("span", "small", below));
    }

    /** What everybody must know, and that local rules come first. */
    static Node cautions(Lettering lettering) {
        Node list = Node.of("ul");
        CAUTIONS.forEach(key -> list.add(Node.saying("li", lettering.of(key))));
        return Node.of("div", "cautions")
                .add(Node.saying("h2", lettering.of("cautions")), list, Node.saying("p", lettering.of("defer")));
    }

    /** A line to write on, with what belongs there below it. */
    static Node lineFor(String what) {
        return Node.of("div", "line").add(Node.saying("span", what));
    }

    /** Things side by side, so many to a row. */
    static Node grid(String looks, int columns, List<Node> cells) {
        Node table = Node.of("table", "grid " + looks);
        for (int from = 0; from < cells.size(); from += columns) {
            Node row = Node.of("tr");
            for (int i = from; i < from + columns; i++) {
                Node cell = Node.of("td");
                row.add(i < cells.size() ? cell.add(cells.get(i)) : cell.with("class", "none"));
            }
            table.add(row);
        }
        return table;
    }
}
