package org.lowfirst.app.journal;

import java.util.List;
import org.lowfirst.station.GateFact;

/** What decides whether a bottle may be filled: how each kind of fact is written. */
final class GateCodecs {

    static final List<FactCodec<?>> ALL = List.of(new FactCodec<>(
            "rule-book.adopted",
            1,
            GateFact.RuleBookAdopted.class,
            f -> new Payload().with("text", f.text()),
            p -> new GateFact.RuleBookAdopted(p.text("text"))));

    private GateCodecs() {}
}
