package org.lowfirst.web;

import java.time.Instant;
import java.util.List;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Command.RegisterBottle;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Reading;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;
import org.lowfirst.station.WaterVolume;

/** A bench to look at: supplies A, B, C of 50 L at 62, 118 and 190 bar, bottle M-03 of 5 L that read 40 bar. */
final class Sample {

    static final BenchId BENCH = new BenchId("larkmoor");

    private static final StatedTemperature TWENTY = StatedTemperature.of("20", TemperatureUnit.CELSIUS);

    private final Benches benches;
    private final Instant now;
    private int keys;

    private Sample(Benches benches, Instant now) {
        this.benches = benches;
        this.now = now;
    }

    static void enter(Benches benches, Instant now) {
        new Sample(benches, now).enter();
    }

    private void enter() {
        Surroundings surroundings =
                new Surroundings(TWENTY, StatedAbsolutePressure.STANDARD, StatedVolume.of("0", VolumeUnit.LITRE));
        entered(benches.openingABench()
                .open(
                        BENCH,
                        new Settings(
                                "Larkmoor Gliders",
                                Units.METRIC,
                                RuleSet.EU,
                                surroundings,
                                bar("200"),
                                List.of("Iris Holm", "Tom Reed")),
                        submission()));
        supply("A", "62");
        supply("B", "118");
        supply("C", "190");
        BottleDetails bottle = new BottleDetails("M-03", "Nora Vale", litres("5"), bar("200"), null, bar("150"));
        entered(benches.registeringBottles()
                .register(BENCH, new RegisterBottle(new BottleId("m-03"), bottle, reads("40")), submission()));
    }

    private void supply(String name, String reading) {
        SupplyDetails details = new SupplyDetails(name, null, litres("50"), bar("200"));
        entered(benches.keepingTheBank()
                .connect(BENCH, new ConnectSupply(new SupplyId("s-" + name), details, reads(reading)), submission()));
    }

    private Reading reads(String bar) {
        return new Reading(bar(bar), now, TWENTY, false, null);
    }

    private Submission submission() {
        keys++;
        return Submission.now(new EntryKey("sample-" + keys), "Iris Holm");
    }

    private static StatedPressure bar(String value) {
        return StatedPressure.of(value, PressureUnit.BAR);
    }

    private static WaterVolume litres(String value) {
        return WaterVolume.stamped(StatedVolume.of(value, VolumeUnit.LITRE));
    }

    private static void entered(Recording recording) {
        if (!(recording instanceof Recording.Recorded)) {
            throw new AssertionError(recording);
        }
    }
}
