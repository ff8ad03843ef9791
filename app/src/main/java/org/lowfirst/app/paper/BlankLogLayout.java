package org.lowfirst.app.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A wide table with room to write. */
final class BlankLogLayout {

    private static final int ROWS = 14;
    private static final int LEAST_SUPPLIES = 4;
    private static final int BEFORE_SUPPLIES = 5;
    private static final int COLUMNS = BEFORE_SUPPLIES + 3;

    private final Lettering lettering;

    BlankLogLayout(Lettering lettering) {
        this.lettering = lettering;
    }

    Sheet of(BlankLog paper) {
        List<String> supplies = supplies(paper);
        String pressure = paper.units().pressure().symbol();
        List<Node> heads = new ArrayList<>(List.of(
                head("log.day"),
                head("log.clock"),
                head("bottle"),
                Node.saying(
                        "th",
                        lettering.of(
                                "log.temperature",
                                "unit",
                                paper.units().temperature().symbol())),
                Node.saying("th", lettering.of("log.before", "unit", pressure))));
        supplies.forEach(supply -> heads.add(Node.saying("th", "pair", lettering.of("log.supply", "supply", supply))));
        heads.add(Node.saying("th", lettering.of("log.after", "unit", pressure)));
        heads.add(head("log.filler"));
        heads.add(head("log.second"));
        return new Sheet(
                "blank-log",
                true,
                List.of(
                        Parts.title(
                                lettering.of("title.blank-log"), paper.heading().bench()),
                        Node.saying("p", lettering.of("log.how", "unit", pressure)),
                        Node.of("table", "lines log")
                                .add(
                                        Node.of("thead").add(Node.of("tr").addAll(heads)),
                                        Node.of("tbody").addAll(rows(supplies.size()))),
                        Node.saying("p", "small", lettering.of("log.afterwards"))));
    }

    private Node head(String key) {
        return Node.saying("th", lettering.of(key));
    }

    private static List<String> supplies(BlankLog paper) {
        List<String> named = new ArrayList<>(paper.supplies());
        while (named.size() < LEAST_SUPPLIES) {
            named.add("");
        }
        return named;
    }

    /** In the cell of a supply two figures are written, one on each side of the stroke. */
    private static List<Node> rows(int supplies) {
        return IntStream.range(0, ROWS)
                .mapToObj(i -> {
                    Node row = Node.of("tr");
                    IntStream.range(0, supplies + COLUMNS)
                            .forEach(column -> row.add(
                                    column >= BEFORE_SUPPLIES && column < BEFORE_SUPPLIES + supplies
                                            ? Node.saying("td", "pair", "/")
                                            : Node.of("td")));
                    return row;
                })
                .toList();
    }
}
