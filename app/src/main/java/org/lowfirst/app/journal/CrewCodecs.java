package org.lowfirst.app.journal;

import java.util.List;
import org.lowfirst.station.CrewFact;
import org.lowfirst.station.FillId;

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
                    p -> new CrewFact.PersonLeft(p.text("person"), p.text("reason"))),
            new FactCodec<>(
                    "entry.signed",
                    1,
                    CrewFact.EntrySigned.class,
                    f -> new Payload().with("entry", f.entry()).with("signer", f.signer()),
                    p -> new CrewFact.EntrySigned(p.number("entry"), p.text("signer"))),
            new FactCodec<>(
                    "fill.second-person-named",
                    1,
                    CrewFact.SecondPersonNamed.class,
                    f -> new Payload()
                            .with("fill", f.fill().value())
                            .with("filler", f.filler())
                            .with("second", f.second()),
                    p -> new CrewFact.SecondPersonNamed(
                            new FillId(p.text("fill")), p.text("filler"), p.text("second"))));

    private CrewCodecs() {}
}
