package org.lowfirst.app.paper;

import java.util.Map;
import org.lowfirst.app.paper.SupplyLabels.Label;

/** Eight labels to a sheet, to be cut apart. */
final class SupplyLabelsLayout {

    private static final int COLUMNS = 2;

    private final Lettering lettering;

    SupplyLabelsLayout(Lettering lettering) {
        this.lettering = lettering;
    }

    Sheet of(SupplyLabels paper) {
        String day = lettering.day(paper.heading().printedAt());
        return Sheet.upright(
                "supply-labels",
                Parts.grid(
                        "labels",
                        COLUMNS,
                        paper.labels().stream().map(label -> label(label, day)).toList()));
    }

    private Node label(Label label, String day) {
        String serial = label.serial();
        Node rank = Node.of("div", "rank").add(Node.saying("b", Integer.toString(label.rank())));
        Node about = Node.of("div", "about")
                .add(
                        Node.saying("p", "name", label.name()),
                        Node.saying("p", "gas", lettering.of("label.gas")),
                        Node.saying(
                                "p",
                                lettering.asTyped(label.waterVolume()) + ", "
                                        + lettering.of(
                                                "label.marked", "marked", lettering.asTyped(label.servicePressure()))),
                        Node.saying(
                                "p",
                                lettering.of("label.serial") + " "
                                        + (serial == null ? lettering.of("label.serial.none") : serial)));
        String rankOf = label.bank().isEmpty() ? "label.rank-of" : "label.rank-of-bank";
        Node foot = Node.of("div", "turn")
                .add(
                        Node.saying(
                                "p",
                                lettering.of(
                                        rankOf,
                                        Map.of(
                                                "rank", Integer.toString(label.rank()),
                                                "of", Integer.toString(label.of()),
                                                "bank", label.bank(),
                                                "day", day))),
                        Node.saying("p", "standing", lettering.standing(label.standing())),
                        Node.saying("p", lettering.of("label.moves")));
        return Node.of("div", "label").add(rank, about, foot);
    }
}
