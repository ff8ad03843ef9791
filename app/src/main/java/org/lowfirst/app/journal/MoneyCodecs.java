package org.lowfirst.app.journal;

import java.util.List;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MoneyFact;

/** Prices, who pays, and what the supplier takes: how each kind of fact is written. */
final class MoneyCodecs {

    static final List<FactCodec<?>> ALL = List.of(new FactCodec<>(
            "fill.billed",
            1,
            MoneyFact.FillBilled.class,
            f -> new Payload()
                    .with("fill", f.fill().value())
                    .with("payer", f.payer())
                    .with("guest", f.guest()),
            p -> new MoneyFact.FillBilled(new FillId(p.text("fill")), p.text("payer"), p.truth("guest"))));

    private MoneyCodecs() {}
}
