package org.lowfirst.app.money;

import java.util.Map;
import org.lowfirst.app.words.Wording;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.MoneyFact;

/** Why a charge was taken back: the reason given with the correction, or what was entered. */
record Causes(Wording wording) {

    String of(Entry entry) {
        if (entry.fact() instanceof Fact.EntryCorrected correction) {
            return correction.reason();
        } else if (entry.fact() instanceof MoneyFact.FillBilled) {
            return wording.text("cause.billed", Map.of());
        } else if (entry.fact() instanceof MoneyFact.TariffSet) {
            return wording.text("cause.tariff", Map.of());
        }
        return wording.text("cause.late", Map.of());
    }
}
