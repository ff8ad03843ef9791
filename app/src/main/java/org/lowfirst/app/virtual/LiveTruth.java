package org.lowfirst.app.virtual;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.honest.CylinderNow;
import org.lowfirst.app.honest.GaugeNow;
import org.lowfirst.app.honest.ReadingHistory;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.contents.GaugeOffset;
import org.lowfirst.station.GaugeUse;
import org.lowfirst.station.SupplyId;

/** The truth of a virtual bench beside what its journal says. */
record LiveTruth(InventedBench invented, VirtualBench bench, Wording wording) {

    private static final double PER_CENT = 100.0;

    List<String> lines(ReadingHistory history, List<FillSeen> fills) {
        List<String> lines = new ArrayList<>();
        lines.add(wording.text("truth.title", Map.of()));
        Temperature usual =
                invented.settings().surroundings().usualTemperature().temperature();
        for (InventedSupply supply : invented.supplies()) {
            lines.add(supply(supply, usual, history));
        }
        lines.add(gauge("truth.gauge.supplies", invented.onSupplies(), GaugeUse.SUPPLIES, history));
        lines.add(gauge("truth.gauge.bottles", invented.onBottle(), GaugeUse.BOTTLES, history));
        fills.forEach(fill -> lines.add(fill(fill)));
        return lines;
    }

    private String supply(InventedSupply supply, Temperature usual, ReadingHistory history) {
        String name = supply.details().name();
        Optional<CylinderNow> now = history.find(new SupplyId("s-" + name));
        @Nullable GaugePressure shows = now.map(CylinderNow::shows).orElse(null);
        @Nullable GaugePressure within = now.map(CylinderNow::showsWithin).orElse(null);
        String verdict = now.map(CylinderNow::verdict)
                .map(standing -> standing.name())
                .orElse(wording.text("truth.no-verdict", Map.of()));
        double leak = supply.truth().leakPerDay();
        return wording.text(
                leak > 0.0 ? "truth.supply.leaks" : "truth.supply",
                Map.of(
                        "supply",
                        name,
                        "truth",
                        bar(bench.supplySettled(name, usual)),
                        "estimate",
                        shows == null ? "-" : bar(shows),
                        "within",
                        within == null ? "-" : bar(within),
                        "leak",
                        String.format(Locale.ROOT, "%.1f", PER_CENT * leak),
                        "verdict",
                        verdict));
    }

    private String gauge(String key, VirtualGauge gauge, GaugeUse use, ReadingHistory history) {
        @Nullable
        GaugeOffset learned = history.findGauge(use).map(GaugeNow::learned).orElse(null);
        return wording.text(
                key,
                Map.of(
                        "truth",
                        bar(gauge.tooHigh()),
                        "learned",
                        learned == null
                                ? wording.text("truth.nothing-learned", Map.of())
                                : wording.text(
                                        "truth.learned",
                                        Map.of(
                                                "offset", bar(learned.tooHigh()),
                                                "within",
                                                        bar(new GaugePressure(2.0
                                                                * learned.standardDeviation()
                                                                        .pascals()))))));
    }

    private String fill(FillSeen fill) {
        return wording.text(
                "truth.fill",
                Map.of(
                        "bottle", fill.order().bottle(),
                        "target", ToldGuidance.said(fill.order().target()),
                        "shown", ToldGuidance.said(fill.endShown()),
                        "truth", bar(fill.settled())));
    }

    private static String bar(GaugePressure pressure) {
        return String.format(Locale.ROOT, "%.1f bar", pressure.toBar());
    }
}
