package org.lowfirst.app.journal;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import org.lowfirst.station.AheadFigure;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Happening;
import org.lowfirst.station.OutlookFact;

/** One fact of each kind that a bench looks ahead with. */
final class OutlookSamples {

    private OutlookSamples() {}

    static void putInto(Map<String, Fact> facts) {
        facts.put(
                "figures.kept",
                new OutlookFact.FiguresKept(Map.of(
                        AheadFigure.LEAD_DAYS, new BigDecimal("4"),
                        AheadFigure.RENT_PER_DAY, new BigDecimal("0.25"))));
        facts.put(
                "happening.planned",
                new OutlookFact.HappeningPlanned(
                        new Happening("Wave week", LocalDate.of(2026, 6, 20), 7, new BigDecimal("30"))));
        facts.put("happening.dropped", new OutlookFact.HappeningDropped("Wave week", LocalDate.of(2026, 6, 20)));
        facts.put("supplies.ordered", new OutlookFact.SuppliesOrdered(LocalDate.of(2026, 6, 18)));
    }
}
