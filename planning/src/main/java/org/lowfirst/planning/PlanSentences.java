package org.lowfirst.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;

/** A plan explained in sentences. */
final class PlanSentences {

    private final FillPlan plan;
    private final ShownUnits units;
    private final String bottle;

    PlanSentences(FillPlan plan, ShownUnits units) {
        this.plan = plan;
        this.units = units;
        bottle = plan.request().bottle().name();
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        addCap(notes);
        if (plan.reaches() && plan.fill().steps().isEmpty()) {
            notes.add("%s is at its target already; no valve is opened.".formatted(bottle));
            return notes;
        }
        Remedies remedies = plan.remedies();
        if (remedies != null) {
            addShortfall(notes, remedies);
        }
        if (plan.fullestFirst().savedFills() > 0) {
            notes.add("Opening the fullest supply first would give %s from this bank; lowest first gives %s."
                    .formatted(
                            suchFills(plan.fullestFirst().fillsLeft().complete()),
                            plan.fillsLeft().complete()));
        }
        return notes;
    }

    private void addCap(List<String> notes) {
        StopReading stop = plan.stop();
        if (stop.cap() == Cap.NONE) {
            return;
        }
        GaugePressure service = Objects.requireNonNull(plan.request().bottle().servicePressure(), "planned with it");
        if (stop.wanted().compareTo(service) > 0) {
            notes.add("The target of %s (%s) is above its service pressure of %s; the service pressure counts."
                    .formatted(bottle, units.show(stop.wanted()), units.show(service)));
        }
        if (stop.cap() == Cap.COLD_BENCH) {
            notes.add(("The bench is at %s. Warmed up to %s, a bottle shut at %s reads its service pressure of %s:"
                            + " %s is shut at %s.")
                    .formatted(
                            units.show(stop.bench()),
                            units.show(stop.reference()),
                            units.showRoundedDown(stop.reading()),
                            units.show(service),
                            bottle,
                            units.showRoundedDown(stop.reading())));
        }
    }

    private void addShortfall(List<String> notes, Remedies remedies) {
        GaugePressure shortBy = Objects.requireNonNull(plan.shortBy(), "does not reach");
        GaugePressure lower = remedies.lowerTarget();
        if (lower == null) {
            notes.add("No supply that may be opened is above %s, which reads %s: none can give it anything."
                    .formatted(bottle, units.show(plan.fill().finalReading())));
        } else {
            notes.add("The bank brings %s to about %s, %s short of %s. It reaches a target of %s."
                    .formatted(
                            bottle,
                            units.show(plan.fill().finalReading()),
                            units.show(shortBy),
                            units.show(plan.stop().reading()),
                            units.showRoundedDown(lower)));
        }
        String exchange = remedies.exchanges().isEmpty()
                ? null
                : exchange(remedies.exchanges().get(0));
        notes.add(exchange == null ? "No exchange of one supply would finish it." : exchange);
    }

    private @Nullable String exchange(ExchangeChoice choice) {
        ExchangeChoice.WithFull full = choice.withFull();
        GaugePressure least = choice.leastReading();
        if (full != null && full.reaches()) {
            return "A full supply in the place of %s would finish it; such fills then: %s."
                    .formatted(choice.supply(), full.fillsLeft().inWords(units.pressure()));
        }
        return least == null || full != null
                ? null
                : "A supply that reads at least %s in the place of %s would finish it."
                        .formatted(units.showRoundedUp(least), choice.supply());
    }

    private static String suchFills(int n) {
        return n == 0 ? "no such fill" : String.format(Locale.ROOT, "%,d such fill%s", n, n == 1 ? "" : "s");
    }
}
