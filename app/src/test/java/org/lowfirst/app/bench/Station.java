package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Command.RegisterBottle;
import org.lowfirst.station.Entry;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.MarkedPlate;
import org.lowfirst.station.Marking;
import org.lowfirst.station.Reading;
import org.lowfirst.station.RuleSet;
import org.lowfirst.station.Settings;
import org.lowfirst.station.StampLine;
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
import org.lowfirst.station.stamp.Convention;

/** A metric bench to test with, on a database of its own. */
final class Station implements AutoCloseable {

    static final BenchId BENCH = new BenchId("bench");
    static final Instant TEN = Instant.parse("2026-06-14T10:00:00Z");

    final SetClock clock;
    final Benches benches;
    private final String celsius;
    private int keys;

    private Station(Benches benches, String celsius, SetClock clock) {
        this.benches = benches;
        this.celsius = celsius;
        this.clock = clock;
    }

    /** An open bench without bank or bottles. */
    static Station at(Path directory, String celsius) {
        SetClock clock = new SetClock(TEN);
        if (!(Journal.open(directory.resolve("lowfirst.db")) instanceof Opening.Opened opened)) {
            throw new AssertionError("the database does not open");
        }
        Station station = new Station(
                new Benches(opened.journal(), clock, Oxygen.schmidtWagner(), Locale.ENGLISH), celsius, clock);
        if (station.benches.openingABench().findBench(BENCH).isEmpty()) {
            station.recorded(station.benches.openingABench().open(BENCH, station.settings(), station.submission()));
        }
        return station;
    }

    Settings settings() {
        return new Settings(
                "Bench",
                Units.METRIC,
                RuleSet.EU,
                new Surroundings(
                        celsius(),
                        StatedAbsolutePressure.of("1.013", PressureUnit.BAR),
                        StatedVolume.of("0", VolumeUnit.LITRE)),
                bar("200"),
                List.of("Ida", "Tom"));
    }

    Submission submission() {
        return submission(clock.instant());
    }

    Submission submission(Instant effectiveAt) {
        keys++;
        return new Submission(new EntryKey("key-" + keys), "Ida", effectiveAt, false);
    }

    SupplyId supply(String name, String bar) {
        SupplyId id = new SupplyId("supply-" + name);
        SupplyDetails details = new SupplyDetails(name, null, litres("50"), bar("200"));
        recorded(benches.keepingTheBank().connect(BENCH, new ConnectSupply(id, details, reads(bar)), submission()));
        return id;
    }

    BottleId bottle(String name, String litres, String bar) {
        BottleId id = new BottleId("bottle-" + name);
        BottleDetails details = new BottleDetails(name, "Ida", litres(litres), bar("200"), null, bar("150"));
        recorded(benches.registeringBottles()
                .register(BENCH, new RegisterBottle(id, details, reads(bar)), submission()));
        markAndLookAt(id);
        return id;
    }

    /** Enters a marking that keeps the European book, and no to all its questions today. */
    void markAndLookAt(BottleId bottle) {
        recorded(benches.keepingMarkings().mark(BENCH, bottle, steel(), submission()));
        lookAt(bottle);
    }

    void lookAt(BottleId bottle) {
        Map<String, Answer> answers = new HashMap<>();
        benches.judgingFitness()
                .ofBottle(BENCH, bottle)
                .questions()
                .forEach(question -> answers.put(question.code(), Answer.NO));
        recorded(benches.keepingMarkings().answer(BENCH, bottle, answers, submission()));
    }

    static Marking steel() {
        return new Marking(
                new StampLine("ISO 9809-1 PH 300 BAR 2022/04", Convention.EUROPEAN),
                new MarkedPlate("ISO 9809-1", WallMaterial.STEEL, bar("300"), YearMonth.of(2012, 4)),
                TestMark.of(2022, 4),
                Service.oxygen("G 3/4"),
                0,
                null);
    }

    StatedTemperature celsius() {
        return StatedTemperature.of(celsius, TemperatureUnit.CELSIUS);
    }

    Reading reads(String bar) {
        return reads(bar, clock.instant());
    }

    Reading reads(String bar, Instant at) {
        return new Reading(bar(bar), at, celsius(), false, null);
    }

    static StatedPressure bar(String value) {
        return StatedPressure.of(value, PressureUnit.BAR);
    }

    static WaterVolume litres(String value) {
        return WaterVolume.stamped(StatedVolume.of(value, VolumeUnit.LITRE));
    }

    /** What each supply of the bank shows now [bar], rank 1 first. */
    List<Double> bank() {
        return benches.keepingTheBank().bank(BENCH).supplies().stream()
                .map(view -> view.estimate().toBar())
                .toList();
    }

    List<Entry> recorded(Recording recording) {
        assertThat(recording).isInstanceOf(Recording.Recorded.class);
        return ((Recording.Recorded) recording).entries();
    }

    @Override
    public void close() {
        benches.close();
    }
}
