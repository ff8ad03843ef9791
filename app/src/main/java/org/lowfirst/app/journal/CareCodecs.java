package org.lowfirst.app.journal;

import java.util.List;
import org.lowfirst.station.CareFact;

/** Equipment, groups of bottles, local numbers: how each kind of fact is written. */
final class CareCodecs {

    static final List<FactCodec<?>> ALL = List.of(new FactCodec<>(
            "upkeep.ended",
            1,
            CareFact.UpkeepEnded.class,
            f -> new Payload().with("equipment", f.equipment()).with("reason", f.reason()),
            p -> new CareFact.UpkeepEnded(p.text("equipment"), p.text("reason"))));

    private CareCodecs() {}
}
