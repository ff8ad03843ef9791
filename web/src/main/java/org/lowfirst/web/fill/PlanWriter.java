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
import org.lowfirst.planning.SkipReason;
import org.lowfirst.planning.Skipped;
import org.lowfirst.planning.Step;
import org.lowfirst.planning.contents.FillSpread;
import org.lowfirst.planning.contents.FillSpread.CountedFill;
import org.lowfirst.planning.contents.FillSpread.Spread;
import org.lowfirst.station.WarmStop;
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

    /** Above this chance a plan is not said to be unsure. */
    private static final double SURE = 0.98;

    private final BenchNow now;
    private final Figures figures;
    private final Words words;

    PlanWriter(BenchNow now) {
        this.now = now;
        this.figures = now.figures();
        this.words = now.words();
    }

    /** @param spread how far the gauges may end from the plan */
    PlanSheet sheet(FillPlan plan, FillSpread spread) {
        GaugePressure from = plan.request().bottle().reading();
        @Nullable Remedies remedies = plan.remedies();
        @Nullable GaugePressure lower = remedies == null ? null : remedies.lowerTarget();
        return new PlanSheet(
                figures.pressure(from),
                figures.pressure(plan.fill().finalReading()),
                plan.reaches() ? "" : within(spread.reach()),
                figures.pressure(plan.stop().neverAbove()),
                plan.reaches(),
                shortfall(plan),
                remedies(plan),
                lower == null ? "" : figures.toTypeBelow(lower),
                notes(plan, spread),
                stages(plan, spread),
                plan.fill().skipped().stream().map(this::skipped).toList(),
                Staircases.planned(plan, now),
                whySlowly(plan),
                counts(plan, spread));
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

    private List<String> notes(FillPlan plan, FillSpread spread) {
        List<String> notes = new ArrayList<>();
        now.bench()
                .stand()
                .leaving()
                .forEach(leaving -> notes.add(words.of(
                        "plan.exchanging",
                        now.bench().getSupply(leaving).details().name())));
        String wanted = figures.pressureWithUnit(plan.stop().wanted());
        String stop = figures.pressureWithUnit(plan.stop().reading());
        if (plan.stop().cap() == Cap.SERVICE_PRESSURE) {
            notes.add(words.of("plan.cap.service", wanted, stop));
        } else if (plan.stop().cap() == Cap.COLD_BENCH) {
            notes.add(words.of("plan.cap.cold", wanted, stop));
        }
        @Nullable WarmStop permission = now.bench().warmStop();
        if (permission != null) {
            notes.add(words.of("warm-stops.note", permission.responsible(), permission.followed()));
        }
        if (plan.reaches() && spread.chanceReaches() < SURE) {
            notes.add(words.of("plan.chance", percent(spread.chanceReaches()), stop, within(spread.reach())));
        }
        return notes;
    }

    private static String percent(double chance) {
        return String.format(Figures.LOCALE, "%.0f", 100.0 * chance);
    }

    private String within(Spread spread) {
        return words.of("spread.only", figures.within(spread.within95()));
    }

    private List<StageLine> stages(FillPlan plan, FillSpread spread) {
        List<Step> steps = plan.fill().steps();
        List<StageLine> lines = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            lines.add(stage(
                    steps.get(i),
                    i < spread.stages().size() ? spread.stages().get(i).bottle() : null));
        }
        return lines;
    }

    private StageLine stage(Step step, @Nullable Spread spread) {
        String expected = figures.pressureWithUnit(step.bottle().after());
        String after = spread == null || step.ends() == Ending.TARGET
                ? expected
                : words.of("spread.within", expected, figures.within(spread.within95()));
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
                skipped.rank(), skipped.supply(), figures.pressureWithUnit(skipped.reading()), reason(skipped));
    }

    /** Why it stays shut; for one that is held back or tagged out, why it was. */
    private String reason(Skipped skipped) {
        return now.bench().bank().stream()
                .filter(supply -> skipped.reason() == SkipReason.HELD_BACK
                        && supply.details().name().equals(skipped.supply()))
                .map(supply -> now.bench().stand().standing(supply.id()))
                .map(standing ->
                        words.of("skip.standing." + standing.turn().name().toLowerCase(Locale.ROOT), standing.reason()))
                .findFirst()
                .orElseGet(() -> words.of("skip." + skipped.reason().name().toLowerCase(Locale.ROOT)));
    }

    private Counts counts(FillPlan plan, FillSpread spread) {
        String habit = plan.fullestFirst().savedFills() > 0
                ? words.of(
                        "plan.habit",
                        plan.fullestFirst().fillsLeft().complete(),
                        plan.fullestFirst().savedFills())
                : "";
        return new Counts(
                words.of("plan.delivered", now.gas(plan.fill().delivered()), now.gasCondition()),
                left(plan.fillsLeft()),
                chances(spread),
                habit);
    }

    /** The first fill alone has its chance among the notes. */
    private List<String> chances(FillSpread spread) {
        List<String> chances = new ArrayList<>();
        @Nullable CountedFill last = spread.last();
        if (last != null && last.number() > 1) {
            chances.add(words.of("plan.chance.last", last.number(), percent(last.chanceReaches())));
        }
        @Nullable CountedFill next = spread.next();
        if (next != null) {
            String reach = figures.pressureWithUnit(next.reach().expected());
            chances.add(words.of(
                    "plan.chance.next",
                    next.number(),
                    words.of("spread.within", reach, figures.within(next.reach().within95())),
                    percent(next.chanceReaches())));
        }
        return chances;
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
