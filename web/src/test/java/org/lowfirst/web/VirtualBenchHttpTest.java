package org.lowfirst.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.bench.Benches;
import org.lowfirst.app.bench.JournalLine;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.app.virtual.CylinderTruth;
import org.lowfirst.app.virtual.FillOrder;
import org.lowfirst.app.virtual.FillSeen;
import org.lowfirst.app.virtual.InventedBench;
import org.lowfirst.app.virtual.InventedBottle;
import org.lowfirst.app.virtual.PagesGuidance;
import org.lowfirst.app.virtual.Patience;
import org.lowfirst.app.virtual.Slip;
import org.lowfirst.app.virtual.StageSeen;
import org.lowfirst.app.virtual.VirtualBench;
import org.lowfirst.app.virtual.VirtualClock;
import org.lowfirst.app.virtual.VirtualGauge;
import org.lowfirst.app.virtual.VirtualPerson;
import org.lowfirst.app.virtual.VirtualRoom;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.Fact;
import org.lowfirst.station.StatedPressure;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.transfer.warm.RiseRate;

/**
 * A dozen fills over ten days at a virtual bench, played through the pages: one with a valve shut too early, one with an
 * interruption. Afterwards the journal says what happened, within the errors of the gauges. Seeded.
 */
final class VirtualBenchHttpTest {

    private static final int FILLS = 12;
    private static final int SHUTS_EARLY = 3;
    private static final int IS_CALLED_AWAY = 7;
    private static final StatedPressure TARGET = StatedPressure.of("150", PressureUnit.BAR);

    private static final List<FillSeen> SEEN = new ArrayList<>();
    private static final List<Fact> JOURNAL = new ArrayList<>();
    private static final Map<String, Double> LATEST_BAR = new LinkedHashMap<>();
    private static final Map<String, Double> TRUE_BAR = new LinkedHashMap<>();
    private static List<String> interruptions = List.of();
    private static VirtualGauge onSupplies;
    private static VirtualGauge onBottle;

    @BeforeAll
    static void play(@TempDir Path directory) {
        SplittableRandom chance = new SplittableRandom(20260302);
        Instant start = Instant.parse("2026-03-02T08:00:00Z");
        InventedBench invented = InventedBench.draw(
                new BenchId("virtual"), List.of(62.0, 110.0, 150.0, 195.0), List.of(0.0, 0.005, 0.0, 0.0), 4, chance);
        VirtualRoom room = new VirtualRoom(start, Temperature.ofCelsius(18), 1.5, 3.0, chance.split());
        VirtualBench bench = new VirtualBench(start, room, RiseRate.ofBarPerMinute(14), invented.truths());
        onSupplies = invented.onSupplies();
        onBottle = invented.onBottle();
        VirtualPerson person = new VirtualPerson(bench, onSupplies, onBottle, 1.0, Patience.BRISK, chance.split());
        VirtualClock clock = new VirtualClock(bench::now);
        AtomicLong ids = new AtomicLong();
        Opening.Opened opened = (Opening.Opened) Journal.open(directory.resolve("lowfirst.db"));
        Benches benches = new Benches(opened.journal(), clock, Oxygen.schmidtWagner(), Locale.ENGLISH);
        invented.enter(benches, bench, person, () -> "setup" + ids.incrementAndGet());
        Serving.Started serving = (Serving.Started) WebApplication.start(
                new ServeRequest("127.0.0.1", 0, benches, clock, () -> "k" + ids.incrementAndGet()));
        try (serving;
                benches) {
            URI address = serving.url().resolve("/at/virtual/");
            PagesGuidance guidance = new PagesGuidance(address, InventedBench.SOMEBODY);
            for (int number = 0; number < FILLS; number++) {
                bench.pass(Duration.ofHours(14 + chance.nextInt(10)));
                SEEN.add(fill(number, invented, bench, person, guidance, chance));
            }
            interruptions = guidance.interruptions();
            readings(bench, person, guidance, person.readThermometer(TemperatureUnit.CELSIUS));
            List<JournalLine> lines = benches.readingTheJournal().listLines(invented.id(), 0, 1000);
            for (int i = lines.size() - 1; i >= 0; i--) {
                JOURNAL.add(lines.get(i).entry().fact());
            }
            benches.keepingTheBank()
                    .bank(invented.id())
                    .supplies()
                    .forEach(view -> LATEST_BAR.put(
                            view.supply().details().name(),
                            view.supply().latest().pressure().gauge().toBar()));
            bench.supplies()
                    .forEach(name ->
                            TRUE_BAR.put(name, bench.supplyPressure(name).toBar()));
        }
    }

    private static FillSeen fill(
            int number,
            InventedBench invented,
            VirtualBench bench,
            VirtualPerson person,
            PagesGuidance guidance,
            SplittableRandom chance) {
        StatedTemperature thermometer = person.readThermometer(TemperatureUnit.CELSIUS);
        readings(bench, person, guidance, thermometer);
        InventedBottle bottle =
                invented.bottles().get(number % invented.bottles().size());
        CylinderTruth comes = bottle.comesWith(GaugePressure.ofBar(10.0 + 30.0 * chance.nextDouble()));
        FillOrder order = new FillOrder(comes.name(), person.readBottle(comes.settled()), TARGET, thermometer);
        Slip slip =
                number == SHUTS_EARLY ? Slip.SHUTS_EARLY : number == IS_CALLED_AWAY ? Slip.IS_CALLED_AWAY : Slip.NONE;
        return person.fill(comes, order, guidance, slip);
    }

    private static void readings(
            VirtualBench bench, VirtualPerson person, PagesGuidance guidance, StatedTemperature thermometer) {
        Map<String, StatedPressure> readings = new LinkedHashMap<>();
        bench.supplies().forEach(name -> readings.put(name, person.readSupply(name)));
        guidance.enterReadings(readings, thermometer.value().toPlainString());
    }

    @AfterAll
    static void forget() {
        SEEN.clear();
        JOURNAL.clear();
    }

    private static <T extends Fact> List<T> facts(Class<T> kind) {
        return JOURNAL.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    @Test
    void everyFillIsInTheJournalFromItsFirstReadingToItsLast() {
        List<Fact.FillStarted> started = facts(Fact.FillStarted.class);
        List<Fact.FillFinished> finished = facts(Fact.FillFinished.class);
        assertThat(SEEN).hasSize(FILLS);
        assertThat(started).hasSize(FILLS);
        assertThat(finished).hasSize(FILLS);
        assertThat(facts(Fact.FillAbandoned.class)).isEmpty();
        for (int i = 0; i < FILLS; i++) {
            FillSeen seen = SEEN.get(i);
            assertThat(started.get(i).bottle().value()).endsWith(seen.order().bottle());
            assertThat(started.get(i).target()).isEqualTo(TARGET);
            assertThat(finished.get(i).fill()).isEqualTo(started.get(i).fill());
            reads(started.get(i).before().pressure(), seen.found(), onBottle);
            reads(finished.get(i).after().pressure(), seen.end(), onBottle);
        }
    }

    @Test
    void everyStageIsInTheJournalAsItHappened() {
        List<Fact.StageRecorded> recorded = facts(Fact.StageRecorded.class);
        List<StageSeen> happened =
                SEEN.stream().flatMap(fill -> fill.stages().stream()).toList();
        assertThat(recorded).hasSameSizeAs(happened);
        for (int i = 0; i < recorded.size(); i++) {
            Fact.StageRecorded entry = recorded.get(i);
            StageSeen stage = happened.get(i);
            assertThat(entry.stage().supply().value()).isEqualTo("s-" + stage.supply());
            assertThat(entry.stage().bottleAfter().at()).isEqualTo(stage.at());
            reads(entry.stage().bottleAfter().pressure(), stage.bottle(), onBottle);
            reads(Objects.requireNonNull(entry.stage().supplyAfter()).pressure(), stage.supplyPressure(), onSupplies);
        }
    }

    /** The journal is compared with the truth, not with what was typed. */
    private static void reads(StatedPressure written, GaugePressure truth, VirtualGauge gauge) {
        assertThat(written.gauge().toBar())
                .isCloseTo(truth.toBar(), within(gauge.farthest().toBar()));
    }

    @Test
    void theBankEndsAsItReallyIs() {
        assertThat(LATEST_BAR).hasSize(4);
        LATEST_BAR.forEach((name, bar) -> assertThat(bar)
                .as(name)
                .isCloseTo(TRUE_BAR.get(name), within(onSupplies.farthest().toBar())));
    }

    @Test
    void theInterruptedFillWasTakenUpWhereTheValvesStood() {
        assertThat(interruptions).isNotEmpty().allMatch("How do the valves stand?"::equals);
        assertThat(SEEN.get(IS_CALLED_AWAY).stages()).isNotEmpty();
    }

    @Test
    void aValveShutTooEarlyIsMadeUpFor() {
        List<StageSeen> stages = SEEN.get(SHUTS_EARLY).stages();
        assertThat(stages.get(1).supply()).isEqualTo(stages.get(0).supply());
        assertThat(stages.get(1).bottle().toBar())
                .isGreaterThan(stages.get(0).bottle().toBar() + 5.0);
    }

    /** What the needle never may pass, by the gauge that was watched and read. */
    @Test
    void noBottleEndsAboveItsTarget() {
        assertThat(SEEN)
                .allSatisfy(fill -> assertThat(fill.settled().toBar())
                        .isLessThanOrEqualTo(150.0 + onBottle.farthest().toBar()));
    }
}
