package org.lowfirst.app.paper;

import java.util.List;
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
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.Units;

/** Plans what the next fill of each bottle would be, to its usual target or else to its marked pressure. */
final class NextFills {

    private final Bench bench;
    private final PlanningAFill planning;

    NextFills(Bench bench, PlanningAFill planning) {
        this.bench = bench;
        this.planning = planning;
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
        String why = ((PlanRefused) outcome).inWords(units());
        return new NextFill(target, GaugePressure.of(0, target.unit()), false, List.of(), why);
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
