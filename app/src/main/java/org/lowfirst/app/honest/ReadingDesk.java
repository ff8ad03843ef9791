package org.lowfirst.app.honest;

import java.util.Map;
import org.lowfirst.app.words.Wording;
import org.lowfirst.gas.Digits;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.planning.ShownUnits;
import org.lowfirst.planning.contents.ContentsAssumptions;
import org.lowfirst.planning.contents.ContentsMeasurement;
import org.lowfirst.planning.contents.GasTemperature;
import org.lowfirst.planning.contents.Gauge;
import org.lowfirst.planning.contents.GaugeReading;
import org.lowfirst.planning.contents.MeteredCylinder;
import org.lowfirst.planning.contents.ReadingCheck;
import org.lowfirst.planning.contents.ReadingOutcome;
import org.lowfirst.planning.contents.Surroundings;
import org.lowfirst.station.Bench;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.GaugeUse;
import org.lowfirst.station.Reading;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.WaterVolume;

/** Turns readings that somebody states into measurements, with the gauges of one bench. */
final class ReadingDesk {

    private final Bench bench;
    private final Surroundings surroundings;
    private final ReadingHistory history;
    private final Wording wording;

    ReadingDesk(Bench bench, BenchSource source, ReadingHistory history, Wording wording) {
        this.bench = bench;
        this.surroundings = Reconciled.surroundings(bench, source);
        this.history = history;
        this.wording = wording;
    }

    Surroundings surroundings() {
        return surroundings;
    }

    ShownUnits units() {
        return BenchUnits.shown(bench.settings());
    }

    MeteredCylinder cylinder(CylinderId id) {
        WaterVolume water = id instanceof SupplyId supply
                ? bench.getSupply(supply).details().waterVolume()
                : bench.getBottle((BottleId) id).details().waterVolume();
        return Reconciled.metered(id, water);
    }

    String name(CylinderId id) {
        return id instanceof SupplyId supply
                ? wording.text(
                        "name.supply",
                        Map.of("name", bench.getSupply(supply).details().name()))
                : wording.text(
                        "name.bottle",
                        Map.of("name", bench.getBottle((BottleId) id).details().name()));
    }

    /** The gauge it was taken from, with what was learned; one taken for granted when nobody described it. */
    GaugeNow gauge(CylinderId id, Reading reading) {
        GaugeUse use = id instanceof SupplyId ? GaugeUse.SUPPLIES : GaugeUse.BOTTLES;
        return bench.findGauge(id, reading)
                .flatMap(details -> history.gauges().stream()
                        .filter(gauge -> details.equals(gauge.details()))
                        .findFirst())
                .orElseGet(() -> assumed(use, reading));
    }

    private GaugeNow assumed(GaugeUse use, Reading reading) {
        Gauge gauge = JournalAssumptions.STANDARD.gauge(
                GaugeShelf.assumedKey(use),
                bench.settings().units().pressure(),
                reading.pressure().gauge());
        String name = wording.text("gauge.assumed." + VerdictSentences.key(use.name()), Map.of());
        Map<String, String> values = Map.of(
                "gauge", name,
                "fullScale", units().show(gauge.scale().fullScale()),
                "limit", units().show(gauge.limit()));
        return new GaugeNow(name, use, null, false, gauge, null, wording.text("gauge.assumed.sentence", values));
    }

    /** What a settled reading says. */
    Outcome<ContentsMeasurement> measure(CylinderId id, Reading reading) {
        Gauge gauge = gauge(id, reading).known();
        ContentsAssumptions assumptions = ContentsAssumptions.standard();
        Temperature temperature = reading.temperature().temperature();
        GasTemperature gas = reading.temperatureAssumed()
                ? GasTemperature.assumed(temperature, assumptions)
                : GasTemperature.measured(temperature, assumptions);
        MeteredCylinder cylinder = cylinder(id);
        GaugeReading read = new GaugeReading(
                reading.at(), cylinder.name(), gauge.name(), reading.pressure().gauge(), gas);
        ReadingOutcome outcome = new ReadingCheck(surroundings, assumptions).check(read, cylinder, gauge);
        if (outcome instanceof ReadingOutcome.Accepted accepted) {
            return Outcome.of(accepted.measurement());
        } else if (outcome instanceof ReadingOutcome.Refused refused) {
            String what = wording.text("reading.of.cylinder", Map.of("what", name(id)));
            return Outcome.declined(new Problems(wording).of(refused, what));
        }
        throw new AssertionError("unhandled " + outcome);
    }

    /** A small pressure difference: to a tenth of a bar, to a psi. */
    String fine(GaugePressure difference) {
        PressureUnit unit = units().pressure();
        int digits = unit == PressureUnit.BAR ? 1 : unit == PressureUnit.MEGAPASCAL ? 2 : 0;
        return Digits.in(wording.locale()).of(difference.to(unit), digits) + " " + unit.symbol();
    }
}
