package org.lowfirst.web.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.Cap;
import org.lowfirst.planning.ExchangeChoice;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.FillsLeft;
import org.lowfirst.planning.RankedSupply;
import org.lowfirst.planning.Remedies;
import org.lowfirst.planning.Skipped;
import org.lowfirst.planning.Step;
import org.lowfirst.transfer.Ending;
import org.lowfirst.web.figures.Figures;
import org.lowfirst.web.fill.PlanPage.Counts;
import org.lowfirst.web.fill.PlanPage.PlanSheet;
import org.lowfirst.web.fill.PlanPage.SkippedLine;
import org.lowfirst.web.fill.PlanPage.StageLine;
import org.lowfirst.web.words.Words;
import org.lowfirst.web.workplace.BenchNow;

/** Writes a plan as a sheet people can follow. */
final class PlanWriter {

    /** So many exchanges are offered when the bank cannot do it. */
    private static final int MOST_EXCHANGES = 3;

    private final BenchNow now;
    private final Figures figures;
    private final Words words;

    PlanWriter(BenchNow now) {
        this.now = now;
        this.figures = now.figures();
        this.words = now.words();
    }

    PlanSheet sheet(FillPlan plan) {
        GaugePressure from = plan.request().bottle().reading();
        @Nullable Remedies remedies = plan.remedies();
        @Nullable GaugePressure lower = remedies == null ? null : remedies.lowerTarget();
        return new PlanSheet(
                figures.pressure(from),
                figures.pressure(plan.fill().finalReading()),
                figures.pressure(plan.stop().neverAbove()),
                plan.reaches(),
                shortfall(plan),
                remedies(plan),
                lower == null ? "" : figures.toTypeBelow(lower),
                notes(plan),
                plan.fill().steps().stream().map(this::stage).toList(),
                plan.fill().skipped().stream().map(this::skipped).toList(),
                Staircases.planned(plan, now),
                whySlowly(plan),
                counts(plan));
    }

    private Temperature usual() {
        return now.bench().settings().surroundings().usualTemperature().temperature();
    }

    /** What the fullest supply could do to a valve that is snapped open. */
    private String whySlowly(FillPlan plan) {
        return plan.request().supplies().stream()
                .map(supply -> supply.reading())
                .max(GaugePressure::compareTo)
                .flatMap(fullest -> now.snap(fullest, usual())
                        .map(snap -> words.of(
                                "plan.why",
                                figures.pressureWithUnit(fullest),
                                figures.temperature(snap.realGas()),
                                figures.temperature(snap.constantGamma()))))
                .orElse("");
    }

    private String shortfall(FillPlan plan) {
        @Nullable GaugePressure missing = plan.shortBy();
        return missing == null
                ? ""
                : words.of(
                        "plan.short",
                        figures.pressureWithUnit(plan.stop().reading()),
                        figures.pressureWithUnit(plan.fill().finalReading()),
                        figures.pressureWithUnit(missing));
    }

    /** The exchanges that would do it, best first; when none would, the best one and how far it comes. */
    private List<String> remedies(FillPlan plan) {
        @Nullable Remedies remedies = plan.remedies();
        if (remedies == null) {
            return List.of();
        }
        List<ExchangeChoice> enough = remedies.exchanges().stream()
                .filter(choice -> choice.reaches() || (choice.withFull() == null && choice.leastReading() != null))
                .toList();
        List<ExchangeChoice> shown = enough.isEmpty() ? remedies.exchanges() : enough;
        return shown.stream()
                .limit(enough.isEmpty() ? 1 : MOST_EXCHANGES)
                .map(this::exchange)
                .toList();
    }

    private String exchange(ExchangeChoice choice) {
        String supply = words.of("plan.exchange", choice.supply(), figures.pressureWithUnit(choice.residual()));
        ExchangeChoice.@Nullable WithFull full = choice.withFull();
        if (full != null && full.reaches()) {
            return supply + " " + words.of("plan.exchange.full", left(full.fillsLeft()));
        }
        if (full != null) {
            return supply + " " + words.of("plan.exchange.not", figures.pressureWithUnit(full.finalReading()));
        }
        @Nullable GaugePressure least = choice.leastReading();
        return least == null
                ? supply + " " + words.of("plan.exchange.none")
                : supply + " " + words.of("plan.exchange.least", figures.pressureWithUnit(least));
    }

    private List<String> notes(FillPlan plan) {
        List<String> notes = new ArrayList<>();
        String wanted = figures.pressureWithUnit(plan.stop().wanted());
        String stop = figures.pressureWithUnit(plan.stop().reading());
        if (plan.stop().cap() == Cap.SERVICE_PRESSURE) {
            notes.add(words.of("plan.cap.service", wanted, stop));
        } else if (plan.stop().cap() == Cap.COLD_BENCH) {
            notes.add(words.of("plan.cap.cold", wanted, stop));
        }
        return notes;
    }

    private StageLine stage(Step step) {
        String after = figures.pressureWithUnit(step.bottle().after());
        return new StageLine(
                step.rank(),
                step.supply(),
                words.of(step.ends() == Ending.TARGET ? "plan.shut-at" : "plan.meet-at", after),
                words.of(
                        "plan.falls",
                        figures.pressure(step.supplyReading().before()),
                        figures.pressureWithUnit(step.supplyReading().after())));
    }

    private SkippedLine skipped(Skipped skipped) {
        return new SkippedLine(
                skipped.rank(),
                skipped.supply(),
                figures.pressureWithUnit(skipped.reading()),
                words.of(
                        "skip." + skipped.reason().name().toLowerCase(Locale.ROOT),
                        figures.pressureWithUnit(skipped.bottle())));
    }

    private Counts counts(FillPlan plan) {
        String habit = plan.fullestFirst().savedFills() > 0
                ? words.of(
                        "plan.habit",
                        plan.fullestFirst().fillsLeft().complete(),
                        plan.fullestFirst().savedFills())
                : "";
        return new Counts(
                words.of("plan.delivered", now.gas(plan.fill().delivered()), now.gasCondition()),
                left(plan.fillsLeft()),
                habit);
    }

    private String left(FillsLeft left) {
        return left.inWords(now.shownUnits());
    }

    /** The bank afterwards, e.g. "A 60, B 113, C 186 bar". */
    String bankAfter(FillPlan plan) {
        List<String> all = plan.fill().bankAfter().stream().map(this::after).toList();
        return String.join(", ", all) + " " + figures.pressureUnit();
    }

    private String after(RankedSupply supply) {
        return supply.name() + " " + figures.pressure(supply.reading());
    }
}
