package org.lowfirst.app.virtual;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.Recording;
import org.lowfirst.app.bench.Submission;
import org.lowfirst.app.honest.CylinderNow;
import org.lowfirst.app.honest.StandingVerdict;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.planning.contents.VerdictCode;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.Reading;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.SupplyId;
import org.lowfirst.transfer.warm.RiseRate;

/**
 * Verdicts on supplies against the truth: sixteen benches drawn by chance, on each one supply of four that loses 1 % of its contents
 * a day, read every day for two weeks and filled from every third day. Seeded.
 */
class LeakVerdictTest {

    private static final int BENCHES = 16;
    private static final int DAYS = 14;
    private static final int LEAKS = 2;
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    private static final StatedPressure TARGET = StatedPressure.of("150", PressureUnit.BAR);

    /** What stands against each supply in the end; null for nothing. */
    private record Ended(boolean leaks, @Nullable VerdictCode verdict) {}

    private static final List<Ended> ENDED = new ArrayList<>();

    @BeforeAll
    static void play(@TempDir Path directory) {
        AtomicReference<Instant> clock = new AtomicReference<>(START);
        AtomicLong ids = new AtomicLong();
        Opening.Opened opened = (Opening.Opened) Journal.open(directory.resolve("lowfirst.db"));
        try (Benches benches =
                new Benches(opened.journal(), new VirtualClock(clock::get), Oxygen.schmidtWagner(), Locale.ENGLISH)) {
            for (int i = 0; i < BENCHES; i++) {
                play(benches, clock, ids, i);
            }
        }
    }

    private static void play(Benches benches, AtomicReference<Instant> clock, AtomicLong ids, int number) {
        SplittableRandom chance = new SplittableRandom(20260401L + number);
        InventedBench invented = InventedBench.draw(
                new BenchId("l" + number),
                List.of(70.0, 120.0, 150.0 + 20.0 * chance.nextDouble(), 195.0),
                List.of(0.0, 0.0, 0.01, 0.0),
                3,
                chance);
        VirtualRoom room = new VirtualRoom(START, Temperature.ofCelsius(18), 2.0, 3.0, chance.split());
        VirtualBench bench = new VirtualBench(START, room, RiseRate.ofBarPerMinute(14), invented.truths());
        VirtualPerson person = new VirtualPerson(
                bench, invented.onSupplies(), invented.onBottle(), 1.0, Patience.BRISK, chance.split());
        clock.set(bench.now());
        invented.enter(benches, bench, person, () -> "id" + ids.incrementAndGet());
        BenchGuidance guidance = new BenchGuidance(
                benches, invented.id(), InventedBench.SOMEBODY, () -> "id" + ids.incrementAndGet(), () -> {
                    clock.set(bench.now());
                    return bench.now();
                });
        for (int day = 1; day <= DAYS; day++) {
            bench.pass(Duration.ofHours(22));
            clock.set(bench.now());
            readings(benches, invented, bench, person, ids);
            if (day % 3 == 0) {
                InventedBottle bottle = invented.bottles().get(day / 3 % 3);
                CylinderTruth comes = bottle.comesWith(GaugePressure.ofBar(15.0 + 20.0 * chance.nextDouble()));
                FillOrder order = new FillOrder(
                        comes.name(),
                        person.readBottle(comes.settled()),
                        TARGET,
                        person.readThermometer(TemperatureUnit.CELSIUS));
                person.fill(comes, order, guidance, Slip.NONE);
            }
        }
        for (int i = 0; i < bench.supplies().size(); i++) {
            StandingVerdict verdict = benches.judgingReadings()
                    .history(invented.id())
                    .find(new SupplyId("s-" + bench.supplies().get(i)))
                    .map(CylinderNow::verdict)
                    .orElse(null);
            ENDED.add(new Ended(i == LEAKS, verdict == null ? null : verdict.code()));
        }
    }

    private static void readings(
            Benches benches, InventedBench invented, VirtualBench bench, VirtualPerson person, AtomicLong ids) {
        StatedTemperature thermometer = person.readThermometer(TemperatureUnit.CELSIUS);
        for (String name : bench.supplies()) {
            Reading reading = new Reading(person.readSupply(name), bench.now(), thermometer, false, null);
            Recording recording = benches.takingReadings()
                    .take(
                            invented.id(),
                            new TakeReading(new SupplyId("s-" + name), reading),
                            Submission.now(new EntryKey("id" + ids.incrementAndGet()), InventedBench.SOMEBODY));
            assertThat(recording).isInstanceOf(Recording.Recorded.class);
        }
    }

    @Test
    void mostSuppliesThatLoseOnePerCentADayAreCalledLeaking() {
        long found = ENDED.stream()
                .filter(end -> end.leaks() && end.verdict() == VerdictCode.LIKELY_LEAK)
                .count();
        assertThat(found).as("of " + BENCHES).isGreaterThanOrEqualTo(14);
    }

    @Test
    void hardlyATightSupplyIsAccused() {
        long accused = ENDED.stream()
                .filter(end ->
                        !end.leaks() && end.verdict() != null && end.verdict().accuses())
                .count();
        assertThat(accused).as("of " + 3 * BENCHES).isLessThanOrEqualTo(1);
    }
}
