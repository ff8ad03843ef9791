package org.lowfirst.app.honest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.lowfirst.planning.contents.BenchFact;
import org.lowfirst.planning.contents.BenchHistory;
import org.lowfirst.planning.contents.ContentsAssumptions;
import org.lowfirst.planning.contents.Gauge;
import org.lowfirst.planning.contents.MeteredCylinder;
import org.lowfirst.planning.contents.MeteredCylinder.VolumeOrigin;
import org.lowfirst.planning.contents.Reconciliation;
import org.lowfirst.planning.contents.Surroundings;
import org.lowfirst.station.Bench;
import org.lowfirst.station.Bottle;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.Entry;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Supply;
import org.lowfirst.station.VolumeBasis;
import org.lowfirst.station.WaterVolume;

/**
 * A bench's journal as facts, and what they come to.
 *
 * @param cylinders by key
 * @param ids identity of each cylinder by key
 * @param gauges by key
 * @param current keys of the gauges in use
 * @param noted readings and draws in order
 */
record Reconciled(
        Map<String, MeteredCylinder> cylinders,
        Map<String, CylinderId> ids,
        Map<String, GaugeShelf.Shelved> gauges,
        List<String> current,
        List<FactWriter.Noted> noted,
        BenchHistory history) {

    static Reconciled of(Bench bench, List<Entry> entries, BenchSource source) {
        GaugeShelf shelf = new GaugeShelf(bench.settings().units().pressure());
        for (Entry entry : entries) {
            if (entry.fact() instanceof Fact.GaugeDescribed f) {
                shelf.foresee(f.gauge());
            }
        }
        bench.gauges().values().forEach(shelf::wasThere);
        ContentsAssumptions assumptions = ContentsAssumptions.standard();
        List<Happening> happenings = Happenings.of(bench, entries, shelf);
        Map<String, GaugeShelf.Shelved> shelved = shelf.all();
        Map<String, Gauge> gauges = new LinkedHashMap<>();
        shelved.forEach((key, gauge) -> gauges.put(key, gauge.gauge()));
        Map<String, MeteredCylinder> cylinders = new LinkedHashMap<>();
        Map<String, CylinderId> ids = new LinkedHashMap<>();
        for (Supply supply : bench.supplies().values()) {
            put(supply.id(), supply.details().waterVolume(), cylinders, ids);
        }
        for (Bottle bottle : bench.listBottles()) {
            put(bottle.id(), bottle.details().waterVolume(), cylinders, ids);
        }
        Surroundings surroundings = surroundings(bench, source);
        FactWriter writer = new FactWriter(assumptions, gauges, cylinders, surroundings);
        List<BenchFact> facts = writer.write(happenings);
        BenchHistory history = new Reconciliation(surroundings, assumptions)
                .reconcile(cylinders.values(), new ArrayList<>(gauges.values()), facts);
        return new Reconciled(cylinders, ids, shelved, shelf.current(), writer.noted(), history);
    }

    MeteredCylinder cylinder(String key) {
        return Objects.requireNonNull(cylinders.get(key), key);
    }

    private static void put(
            CylinderId id, WaterVolume water, Map<String, MeteredCylinder> cylinders, Map<String, CylinderId> ids) {
        cylinders.put(FactWriter.name(id), metered(id, water));
        ids.put(FactWriter.name(id), id);
    }

    static MeteredCylinder metered(CylinderId id, WaterVolume water) {
        return new MeteredCylinder(FactWriter.name(id), water.stated().volume(), origin(water.basis()));
    }

    static VolumeOrigin origin(VolumeBasis basis) {
        return switch (basis) {
            case MEASURED, STAMPED -> VolumeOrigin.STAMPED;
            case NAMEPLATE -> VolumeOrigin.DERIVED;
            case CATALOGUE -> VolumeOrigin.ASSUMED;
        };
    }

    static Surroundings surroundings(Bench bench, BenchSource source) {
        return new Surroundings(
                source.gas(), bench.settings().surroundings().ambient().absolute());
    }
}
