package org.lowfirst.app.paper;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lowfirst.app.bench.PlanningAFill;
import org.lowfirst.app.paper.BenchSheet.NextFill;
import org.lowfirst.app.paper.BenchSheet.PlannedStep;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.planning.PlanRefused;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.station.Bench;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.Judging;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.Units;
import org.lowfirst.station.rules.Advice;
import org.lowfirst.station.rules.Judgement;

/** Plans what the next fill of each bottle would be, to its usual target or else to its marked pressure. */
final class NextFills {

    private static final Set<Advice> ASKED_BESIDE_THE_BOTTLE = Set.of(
            Advice.ANSWER_QUESTION, Advice.TAKE_READING, Advice.STATE_CONTENTS_AT_TEMPERATURE, Advice.CAP_TARGET);

    private final Bench bench;
    private final PlanningAFill planning;
    private final Lettering lettering;
    private final LocalDate day;

    /** @param now tells the day the bottles are judged for */
    NextFills(Bench bench, PlanningAFill planning, Lettering lettering, Instant now) {
        this.bench = bench;
        this.planning = planning;
        this.lettering = lettering;
        this.day = lettering.date(now);
    }

    /** @return null when the bottle's gauge was never read */
    @Nullable
    NextFill of(Bottle bottle) {
        Reading before = bottle.latest();
        if (before == null) {
            return null;
        }
        StatedPressure usual = bottle.details().usualTarget();
        StatedPressure target = usual == null ? bottle.details().servicePressure() : usual;
        String unfit = unfit(bottle, before);
        if (!unfit.isEmpty()) {
            return refused(target, unfit);
        }
        PlanOutcome outcome = planning.plan(bench.id(), bottle.id(), target, settledAtBench(before));
        if (outcome instanceof FillPlan plan) {
            return new NextFill(
                    target,
                    plan.fill().finalReading(),
                    plan.reaches(),
                    plan.fill().steps().stream()
                            .map(step ->
                                    new PlannedStep(step.supply(), step.bottle().after()))
                            .toList(),
                    "");
        }
        return refused(target, ((PlanRefused) outcome).inWords(units()));
    }

    private static NextFill refused(StatedPressure target, String why) {
        return new NextFill(target, GaugePressure.of(0, target.unit()), false, List.of(), why);
    }

    /** No step is shown for a bottle that must not be filled; what is asked beside the bottle each time does not count. */
    private String unfit(Bottle bottle, Reading reading) {
        Judgement judgement =
                Judging.judge(bench, bottle.id(), reading.pressure().gauge(), day, List.of());
        boolean against = Judging.standing(bench, bottle.id(), judgement).stream()
                .anyMatch(finding -> !ASKED_BESIDE_THE_BOTTLE.contains(finding.advice()));
        if (!against) {
            return "";
        }
        boolean marked = bench.areas().gate().papersOf(bottle.id()).marking() != null;
        return lettering.of(marked ? "sheet.next.unfit" : "sheet.next.unmarked");
    }

    /** The sheet is worked out for the bench's usual temperature throughout; a gauge read warmer or colder says so beside it. */
    private Reading settledAtBench(Reading reading) {
        return new Reading(
                reading.pressure(),
                reading.at(),
                bench.settings().surroundings().usualTemperature(),
                reading.temperatureAssumed(),
                reading.gauge());
    }

    private ShownUnits units() {
        Units units = bench.settings().units();
        return new ShownUnits(units.pressure(), units.temperature(), units.volume());
    }
}
