package org.lowfirst.app.virtual;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.gas.EquationOfState;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.StandardAtmosphere;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.Volume;
import org.lowfirst.planning.Conditions;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.contents.ContentsAssumptions;
import org.lowfirst.planning.contents.FillSpread;
import org.lowfirst.planning.contents.FillSpreads;
import org.lowfirst.planning.contents.FillUncertainty;
import org.lowfirst.planning.contents.MeteredCylinder.VolumeOrigin;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.transfer.warm.RiseRate;

/**
 * One fill at a bench of its own, drawn by chance: what the plan stated beforehand, and what was seen.
 *
 * @param spread the plan with its spread
 * @param seen what happened
 * @param truth the bench
 * @param onBottle the bottle's gauge, error included
 */
record OneFill(FillSpread spread, FillSeen seen, InventedBench truth, VirtualGauge onBottle) {

    static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    static final double THERMOMETER_K = 1.0;
    private static final StatedPressure TARGET = StatedPressure.of("150", PressureUnit.BAR);

    /** Supplies 40 to 80, 90 to 130 and 140 to 190 bar, a bottle of 5 L found at 10 to 35 bar, wanted at 150. */
    static OneFill play(Benches benches, AtomicReference<Instant> clock, AtomicLong ids, int number) {
        SplittableRandom chance = new SplittableRandom(20260302L + number);
        InventedBench invented = InventedBench.draw(
                new BenchId("v" + number),
                List.of(between(40, 80, chance), between(90, 130, chance), between(140, 190, chance)),
                List.of(0.0, 0.0, 0.0),
                1,
                chance);
        VirtualRoom room = new VirtualRoom(START, Temperature.ofCelsius(18), 1.0, 3.0, chance.split());
        VirtualBench bench = new VirtualBench(START, room, RiseRate.ofBarPerMinute(14), invented.truths());
        VirtualPerson person = new VirtualPerson(
                bench, invented.onSupplies(), invented.onBottle(), THERMOMETER_K, Patience.SETTLED, chance.split());
        clock.set(bench.now());
        invented.enter(benches, bench, person, () -> "id" + ids.incrementAndGet());
        CylinderTruth bottle = invented.bottles().get(0).comesWith(GaugePressure.ofBar(between(10, 35, chance)));
        FillOrder order = new FillOrder(
                bottle.name(),
                person.readBottle(bottle.settled()),
                TARGET,
                benches.openingABench()
                        .findBench(invented.id())
                        .orElseThrow()
                        .bank()
                        .get(0)
                        .latest()
                        .temperature());
        FillSpread spread = stated(benches, invented, order, bench.now());
        BenchGuidance guidance = new BenchGuidance(
                benches, invented.id(), InventedBench.SOMEBODY, () -> "id" + ids.incrementAndGet(), () -> {
                    clock.set(bench.now());
                    return bench.now();
                });
        return new OneFill(spread, person.fill(bottle, order, guidance, Slip.NONE), invented, invented.onBottle());
    }

    private static FillSpread stated(Benches benches, InventedBench bench, FillOrder order, Instant now) {
        Reading before = new Reading(order.before(), now, order.temperature(), false, null);
        FillPlan plan = (FillPlan)
                benches.planningAFill().plan(bench.id(), new BottleId("b-" + order.bottle()), order.target(), before);
        Map<String, FillUncertainty.Known> supplies = new LinkedHashMap<>();
        bench.supplies()
                .forEach(supply -> supplies.put(
                        supply.details().name(),
                        new FillUncertainty.Known(bench.onSupplies().known(), VolumeOrigin.STAMPED)));
        FillUncertainty known = new FillUncertainty(
                supplies, new FillUncertainty.Known(bench.onBottle().known(), VolumeOrigin.STAMPED), THERMOMETER_K);
        Conditions conditions = new Conditions(
                Oxygen.schmidtWagner(),
                order.temperature().temperature(),
                bench.settings().rules().figures().referenceTemperature().temperature(),
                bench.settings().surroundings().ambient().absolute(),
                new Volume(0.0));
        return FillSpreads.under(conditions, THERMOMETER_K, ContentsAssumptions.standard())
                .spread(plan, known);
    }

    private static double between(double low, double high, SplittableRandom chance) {
        return low + (high - low) * chance.nextDouble();
    }

    /** What a gauge would have shown were the air as it was when the plan was made. */
    GaugePressure asPlanned(GaugePressure shown, Temperature then) {
        EquationOfState gas = Oxygen.schmidtWagner();
        return gas.density(shown.toAbsolute(StandardAtmosphere.PRESSURE), then)
                .map(density -> gas.pressure(density, seen.room()).orElseThrow())
                .orElseThrow()
                .toGauge(StandardAtmosphere.PRESSURE);
    }

    /** What the bottle's gauge showed when this supply was done with; empty when it was not opened. */
    List<StageSeen> stagesAt(String supply) {
        return seen.stages().stream()
                .filter(stage -> stage.supply().equals(supply))
                .toList();
    }
}
