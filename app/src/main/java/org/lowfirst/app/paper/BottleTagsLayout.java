package org.lowfirst.app.paper;

import org.lowfirst.app.paper.BottleTags.Tag;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.due.DueItem;
import org.lowfirst.station.due.DueKind;

/** Ten tags to a sheet, to be cut apart. */
final class BottleTagsLayout {

    private static final int COLUMNS = 2;

    private final Lettering lettering;

    BottleTagsLayout(Lettering lettering) {
        this.lettering = lettering;
    }

    Sheet of(BottleTags paper) {
        String bench = paper.heading().bench();
        return Sheet.upright(
                "bottle-tags",
                Parts.grid(
                        "tags",
                        COLUMNS,
                        paper.tags().stream().map(tag -> tag(tag, bench)).toList()));
    }

    private Node tag(Tag tag, String bench) {
        StatedPressure usual = tag.usualTarget();
        Node about = Node.of("div", "about")
                .add(
                        Node.saying("p", "name", tag.name()),
                        Node.saying("p", tag.owner().isEmpty() ? bench : tag.owner()),
                        Node.saying("p", lettering.of("tag.volume", "volume", lettering.asTyped(tag.waterVolume()))),
                        Node.saying(
                                "p",
                                "marked",
                                lettering.of("tag.marked", "marked", lettering.asTyped(tag.servicePressure()))));
        if (usual != null) {
            about.add(Node.saying("p", lettering.of("tag.usual", "usual", lettering.asTyped(usual))));
        }
        DueItem due = tag.due();
        if (due != null) {
            String key = due.kind() == DueKind.CYLINDER_LIFE ? "tag.life" : "tag.test";
            about.add(Node.saying("p", lettering.of(key, "day", lettering.day(due.lastDay()))));
        }
        return Node.of("div", "tag")
                .add(
                        Node.of("div", "hole"),
                        SquareCode.of(tag.address()),
                        about,
                        Node.saying("p", "bench", bench),
                        Node.saying("p", "address", tag.address()));
    }
}
