package org.lowfirst.app.journal;

import java.util.List;
import org.lowfirst.station.CrewFact;

/** The people of the bench: how each kind of fact is written. */
final class CrewCodecs {

    static final List<FactCodec<?>> ALL = List.of(
            new FactCodec<>(
                    "person.described",
                    1,
                    CrewFact.PersonDescribed.class,
                    f -> CrewParts.write(f.person()),
                    p -> new CrewFact.PersonDescribed(CrewParts.person(p))),
            new FactCodec<>(
                    "person.left",
                    1,
                    CrewFact.PersonLeft.class,
                    f -> new Payload().with("person", f.person()).with("reason", f.reason()),
                    p -> new CrewFact.PersonLeft(p.text("person"), p.text("reason"))));

    private CrewCodecs() {}
}
