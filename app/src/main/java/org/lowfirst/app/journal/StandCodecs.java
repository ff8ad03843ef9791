package org.lowfirst.app.journal;

import java.util.List;
import org.lowfirst.station.StandFact;
import org.lowfirst.station.SupplyId;

/** How a supply stands in the bank: how each kind of fact is written. */
final class StandCodecs {

    static final List<FactCodec<?>> ALL = List.of(new FactCodec<>(
            "supply.released",
            1,
            StandFact.SupplyReleased.class,
            f -> new Payload().with("supply", f.supply().value()),
            p -> new StandFact.SupplyReleased(new SupplyId(p.text("supply")))));

    private StandCodecs() {}
}
