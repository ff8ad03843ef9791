package org.lowfirst.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.words.Phrases;

/** A plan explained in sentences. */
final class PlanSentences {

    private final FillPlan plan;
    private final ShownUnits units;
    private final Phrases phrases;
    private final String bottle;

    PlanSentences(FillPlan plan, ShownUnits units) {
        this.plan = plan;
        this.units = units;
        phrases = units.phrases();
        bottle = plan.request().bottle().name();
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        addCap(notes);
        if (plan.reaches() && plan.fill().steps().isEmpty()) {
            notes.add(phrases.text("note.at-target", Map.of("bottle", bottle)));
            return notes;
        }
        Remedies remedies = plan.remedies();
        if (remedies != null) {
            addShortfall(notes, remedies);
        }
        if (plan.fullestFirst().savedFills() > 0) {
            notes.add(phrases.text(
                    "note.fullest-first",
                    Map.of(
                            "fills",
                            suchFills(plan.fullestFirst().fillsLeft().complete()),
                            "lowest",
                            Integer.toString(plan.fillsLeft().complete()))));
        }
        return notes;
    }

    private void addCap(List<String> notes) {
        StopReading stop = plan.stop();
        if (stop.cap() == Cap.NONE) {
            return;
        }
        GaugePressure service = Objects.requireNonNull(plan.request().bottle().servicePressure(), "planned with it");
        Map<String, String> values = Map.of(
                "bottle", bottle,
                "target", units.show(stop.wanted()),
                "service", units.show(service),
                "bench", units.show(stop.bench()),
                "reference", units.show(stop.reference()),
                "stop", units.showRoundedDown(stop.reading()));
        if (stop.wanted().compareTo(service) > 0) {
            notes.add(phrases.text("note.target-above-service", values));
        }
        if (stop.cap() == Cap.COLD_BENCH) {
            notes.add(phrases.text("note.cold-bench", values));
        }
    }

    private void addShortfall(List<String> notes, Remedies remedies) {
        GaugePressure shortBy = Objects.requireNonNull(plan.shortBy(), "does not reach");
        GaugePressure lower = remedies.lowerTarget();
        String reading = units.show(plan.fill().finalReading());
        if (lower == null) {
            notes.add(phrases.text("note.nothing-above", Map.of("bottle", bottle, "reading", reading)));
        } else {
            notes.add(phrases.text(
                    "note.short",
                    Map.of(
                            "bottle", bottle,
                            "reading", reading,
                            "short", units.show(shortBy),
                            "stop", units.show(plan.stop().reading()),
                            "lower", units.showRoundedDown(lower))));
        }
        String exchange = remedies.exchanges().isEmpty()
                ? null
                : exchange(remedies.exchanges().get(0));
        notes.add(exchange == null ? phrases.text("note.no-exchange", Map.of()) : exchange);
    }

    private @Nullable String exchange(ExchangeChoice choice) {
        ExchangeChoice.WithFull full = choice.withFull();
        GaugePressure least = choice.leastReading();
        if (full != null && full.reaches()) {
            return phrases.text(
                    "note.full-exchange",
                    Map.of("supply", choice.supply(), "fills", full.fillsLeft().inWords(units)));
        }
        return least == null || full != null
                ? null
                : phrases.text(
                        "note.least-exchange", Map.of("supply", choice.supply(), "least", units.showRoundedUp(least)));
    }

    private String suchFills(int n) {
        String key = n == 0 ? "such-fills.none" : n == 1 ? "such-fills.one" : "such-fills.many";
        return phrases.text(key, Map.of("count", Integer.toString(n)));
    }
}
