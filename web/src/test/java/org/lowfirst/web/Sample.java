package org.lowfirst.web;

import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import org.lowfirst.station.Command.FinishFill;
import org.lowfirst.station.Command.RecordStage;
import org.lowfirst.station.Command.RegisterBottle;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MarkedPlate;
import org.lowfirst.station.Marking;
import org.lowfirst.station.Reading;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedAbsolutePressure;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.StatedVolume;
import org.lowfirst.station.SupplyDetails;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.Surroundings;
import org.lowfirst.station.Units;
import org.lowfirst.station.WaterVolume;
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.station.rules.WallMaterial;

/** Benches to look at. The usual one: supplies A, B, C of 50 L at 62, 118 and 190 bar, bottle M-03 of 5 L that read 40. */
final class Sample {

    static final String WHO = "Iris Holm";
    static final BenchId BENCH = new BenchId("larkmoor");

    private final Benches benches;
    private final Instant now;
    private final StatedTemperature temperature;
    private int keys;

    private Sample(Benches benches, Instant now, String celsius) {
        this.benches = benches;
        this.now = now;
        this.temperature = StatedTemperature.of(celsius, TemperatureUnit.CELSIUS);
    }

    static void enter(Benches benches, Instant now) {
        larkmoor(benches, now);
    }

    /** The same and bottle M-11 of 2 L that read 60 bar. */
    static void enterWithTwoBottles(Benches benches, Instant now) {
        larkmoor(benches, now).bottle("M-11", "2", "60");
    }

    private static Sample larkmoor(Benches benches, Instant now) {
        Sample sample = new Sample(benches, now, "20");
        sample.open("Larkmoor Gliders");
        sample.supply("A", "62");
        sample.supply("B", "118");
        sample.supply("C", "190");
        sample.bottle("M-03", "5", "40");
        return sample;
    }

    /** Supplies P, Q, R of 50 L at 44, 97 and 131 bar at 15 C, bottle W-10 of 10 L that read 20 bar. */
    static void enterOneThatCannotReach(Benches benches, Instant now) {
        Sample sample = new Sample(benches, now, "15");
        sample.open("Fellside Wave Camp");
        sample.supply("P", "44");
        sample.supply("Q", "97");
        sample.supply("R", "131");
        sample.bottle("W-10", "10", "20");
    }

    /** Fills M-03 from supply A, from 40 bar to a reading. */
    static void fill(Benches benches, Instant now, String id, String bar) {
        Sample sample = new Sample(benches, now, "20");
        FillId fill = new FillId(id);
        StartFill start = new StartFill(fill, new BottleId("m-03"), bar("150"), sample.reads("40"));
        Stage stage = new Stage(new SupplyId("s-A"), sample.reads(bar), null, null);
        entered(benches.guidingAFill().start(BENCH, start, named(id + "-1")));
        entered(benches.guidingAFill().recordStage(BENCH, new RecordStage(fill, stage), named(id + "-2")));
        entered(benches.guidingAFill().finish(BENCH, new FinishFill(fill, sample.reads(bar)), named(id + "-3")));
    }

    private static Submission named(String key) {
        return Submission.now(new EntryKey(key), "Iris Holm");
    }

    private void open(String name) {
        Surroundings surroundings =
                new Surroundings(temperature, StatedAbsolutePressure.STANDARD, StatedVolume.of("0", VolumeUnit.LITRE));
        entered(benches.openingABench()
                .open(
                        BENCH,
                        new Settings(
                                name,
                                Units.METRIC,
                                RuleSet.EU,
                                surroundings,
                                bar("200"),
                                List.of("Iris Holm", "Tom Reed")),
                        submission()));
    }

    private void bottle(String name, String litres, String reading) {
        BottleId id = new BottleId(name.toLowerCase(Locale.ROOT));
        BottleDetails bottle = new BottleDetails(name, "Nora Vale", litres(litres), bar("200"), null, bar("150"));
        entered(benches.registeringBottles()
                .register(BENCH, new RegisterBottle(id, bottle, reads(reading)), submission()));
        entered(benches.keepingMarkings().mark(BENCH, id, steel(now), submission()));
        Map<String, Answer> answers = new HashMap<>();
        benches.judgingFitness()
                .ofBottle(BENCH, id)
                .questions()
                .forEach(question -> answers.put(question.code(), Answer.NO));
        entered(benches.keepingMarkings().answer(BENCH, id, answers, submission()));
    }

    /** Steel, tested four years ago. */
    static Marking steel(Instant now) {
        YearMonth tested = YearMonth.from(now.atZone(ZoneOffset.UTC)).minusYears(4);
        return new Marking(
                null,
                new MarkedPlate("ISO 9809-1", WallMaterial.STEEL, bar("300"), tested.minusYears(10)),
                TestMark.of(tested.getYear(), tested.getMonthValue()),
                Service.oxygen("G 3/4"),
                0,
                null);
    }

    private void supply(String name, String reading) {
        SupplyDetails details = new SupplyDetails(name, null, litres("50"), bar("200"));
        entered(benches.keepingTheBank()
                .connect(BENCH, new ConnectSupply(new SupplyId("s-" + name), details, reads(reading)), submission()));
    }

    private Reading reads(String bar) {
        return new Reading(bar(bar), now, temperature, false, null);
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
