package org.lowfirst.app.paper;

import org.lowfirst.app.paper.MonthStatement.Line;

/** The lines of a month and their exact sum. */
final class MonthStatementLayout {

    private final Lettering lettering;

    MonthStatementLayout(Lettering lettering) {
        this.lettering = lettering;
    }

    Sheet of(MonthStatement paper) {
        Node body = Node.of("tbody");
        paper.lines().forEach(line -> body.add(line(line, paper.gasUnit())));
        Node total = Node.of("tr", "total")
                .add(
                        Node.saying("td", lettering.of("statement.total")).with("colspan", "3"),
                        Node.of("td", "figure").add(Node.saying("b", lettering.money(paper.total()))));
        Node lines = Node.of("table", "lines")
                .add(
                        Node.of("thead")
                                .add(Parts.row(
                                        Node.saying("th", "day", lettering.of("statement.day")),
                                        Node.saying("th", lettering.of("statement.what")),
                                        Node.saying("th", "figure", lettering.of("statement.gas")),
                                        Node.saying("th", "figure", lettering.of("statement.amount")))),
                        body.add(total));
        return Sheet.upright(
                "month-statement",
                Parts.title(
                        lettering.of("title.month-statement"), paper.heading().bench()),
                Node.saying("p", "person", paper.person()),
                Node.saying("p", "month", lettering.month(paper.month())),
                paper.lines().isEmpty() ? Node.saying("p", lettering.of("statement.none")) : lines,
                Node.saying("p", "small", lettering.of("statement.corrections")));
    }

    private Node line(Line line, String unit) {
        return Parts.row(
                Parts.cell(lettering.day(line.day())),
                Parts.cell(line.what()),
                Parts.figure(lettering.number(line.quantity()) + " " + unit),
                Parts.figure(lettering.money(line.amount())));
    }
}
