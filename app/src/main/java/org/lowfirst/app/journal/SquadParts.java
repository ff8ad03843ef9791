package org.lowfirst.app.journal;

import org.lowfirst.station.GroupDetails;
import org.lowfirst.station.due.DueKind;
import org.lowfirst.station.due.Upkeep;

/** How equipment and groups of bottles are written. */
final class SquadParts {

    private SquadParts() {}

    static Payload write(Upkeep upkeep) {
        return new Payload()
                .with("kind", Parts.lower(upkeep.kind()))
                .with("equipment", upkeep.name())
                .with("lastDone", upkeep.lastDone().toString())
                .with("months", (long) upkeep.months())
                .with("source", upkeep.source());
    }

    static Upkeep upkeep(Payload p) {
        return new Upkeep(
                Parts.choice(DueKind.class, p.text("kind")),
                p.text("equipment"),
                Parts.day(p.text("lastDone")),
                Math.toIntExact(p.number("months")),
                p.text("source"));
    }

    static Payload write(GroupDetails group) {
        return new Payload()
                .with("group", group.name())
                .with("priority", (long) group.priority())
                .with("floor", Parts.write(group.floor()))
                .with("wish", Parts.write(group.wish()));
    }

    static GroupDetails group(Payload p) {
        return new GroupDetails(
                p.text("group"),
                Math.toIntExact(p.number("priority")),
                p.part("floor", Parts::pressure),
                p.part("wish", Parts::pressure));
    }
}
