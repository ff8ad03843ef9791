package org.lowfirst.app.paper;

import java.util.List;

/** What to do first, whom to call, what to say. What it says is common practice, no source. */
final class EmergencyCardLayout {

    /** Room for numbers nobody entered yet. */
    private static final int LEAST_NUMBERS = 4;

    private final Lettering lettering;

    EmergencyCardLayout(Lettering lettering) {
        this.lettering = lettering;
    }

    Sheet of(EmergencyCard paper) {
        return Sheet.upright(
                "emergency-card",
                Parts.title(
                        lettering.of("title.emergency-card"), paper.heading().bench()),
                Node.of("table", "halves")
                        .add(Node.of("tr")
                                .add(
                                        Node.of("td").add(numbers(paper)),
                                        Node.of("td").add(places(paper)))),
                what("fire", List.of("1", "2", "3", "4", "5")),
                what("leak", List.of("1", "2", "3", "4")),
                what("fall", List.of("1", "2")),
                what("hurt", List.of("1", "2", "3")),
                Node.saying("p", "defer", lettering.of("card.defer")));
    }

    private Node numbers(EmergencyCard paper) {
        Node table = Node.of("table", "numbers");
        paper.numbers()
                .forEach(one -> table.add(
                        Node.of("tr").add(Node.saying("td", one.who()), Node.saying("td", "number", one.number()))));
        for (int i = paper.numbers().size(); i < LEAST_NUMBERS; i++) {
            table.add(Node.of("tr").add(Node.of("td", "write"), Node.of("td", "write")));
        }
        return Node.of("div", "box").add(Node.saying("h2", lettering.of("card.numbers")), table);
    }

    private Node places(EmergencyCard paper) {
        return Node.of("div", "box")
                .add(
                        Node.saying("h2", lettering.of("card.place")),
                        toldOrWritten(paper.place()),
                        Node.saying("h2", lettering.of("card.meet")),
                        toldOrWritten(paper.meetingPoint()));
    }

    private static Node toldOrWritten(String text) {
        return text.isEmpty() ? Node.of("p", "write") : Node.saying("p", "told", text);
    }

    private Node what(String what, List<String> steps) {
        Node list = Node.of("ol");
        steps.forEach(step -> list.add(Node.saying("li", lettering.of("card." + what + "." + step))));
        return Node.of("div", "what").add(Node.saying("h2", lettering.of("card." + what)), list);
    }
}
