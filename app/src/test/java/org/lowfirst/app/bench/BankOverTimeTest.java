package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.PlanOutcome;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.RecordTwoOpenTogether;
import org.lowfirst.station.Command.RemoveSupply;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.Fact;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Refused;
import org.lowfirst.station.Rule;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.SupplyId;

/**
 * A bank at 44, 97 and 131 bar (50 L each), 15 C, and a bottle of 10 L at 20 bar wanted at 150. Pressures: an invented scenario
 * computed with CoolProp 8.0.0 (Schmidt and Wagner), settled.
 */
class BankOverTimeTest {

    @TempDir
    private Path directory;

    private Station station;
    private SupplyId p;
    private SupplyId q;
    private BottleId bottle;

    @BeforeEach
    void open() {
        station = Station.at(directory, "15");
        p = station.supply("P", "44");
        q = station.supply("Q", "97");
        station.supply("R", "131");
        bottle = station.bottle("Ten", "10", "20");
    }

    @AfterEach
    void close() {
        station.close();
    }

    @Test
    void aFillThatCannotReachIsSaidSoBeforeAnythingIsOpened() {
        FillPlan plan = plan();
        assertThat(plan.reaches()).isFalse();
        assertThat(plan.fill().finalReading().toBar()).isCloseTo(123.8, within(1.0));
        assertThat(Objects.requireNonNull(plan.shortBy()).toBar()).isCloseTo(26.2, within(1.0));
    }

    @Test
    void afterAnExchangeTheRanksMove() {
        station.recorded(station.benches
                .keepingTheBank()
                .remove(Station.BENCH, new RemoveSupply(p, station.reads("44"), "exchanged"), station.submission()));
        station.supply("P2", "200");
        assertThat(names()).containsExactly("Q", "R", "P2");
        FillPlan plan = plan();
        assertThat(plan.reaches()).isTrue();
        assertThat(plan.fillsLeft().complete()).isEqualTo(5);
        assertThat(Objects.requireNonNull(plan.fillsLeft().nextStopsAt()).toBar())
                .isCloseTo(143.3, within(1.0));
    }

    @Test
    void aNewSupplyIsRankedByWhatItReads() {
        station.supply("P2", "120");
        assertThat(names()).containsExactly("P", "Q", "P2", "R");
    }

    @Test
    void aReadingSettlesWhatTheBookHad() {
        station.clock.forward(Duration.ofHours(1));
        station.recorded(station.benches
                .takingReadings()
                .take(Station.BENCH, new TakeReading(q, station.reads("90.5")), station.submission()));
        SupplyView view =
                station.benches.keepingTheBank().bank(Station.BENCH).supplies().get(1);
        assertThat(view.estimate().toBar()).isCloseTo(90.5, within(1e-6));
        assertThat(view.estimated()).isFalse();
        assertThat(view.age()).isZero();
    }

    @Test
    void aReadingOnAColdDayIsShownAtTheUsualTemperature() {
        Reading cold = new Reading(
                Station.bar("148"),
                station.clock.instant(),
                StatedTemperature.of("6", TemperatureUnit.CELSIUS),
                false,
                null);
        station.recorded(
                station.benches.takingReadings().take(Station.BENCH, new TakeReading(q, cold), station.submission()));
        double warmer = station.bank().get(2);
        assertThat(warmer).isGreaterThan(152.0).isLessThan(156.0);
    }

    @Test
    void twoSuppliesOpenTogetherLevelBetweenThem() {
        station.recorded(station.benches
                .keepingTheBank()
                .recordTwoOpenTogether(
                        Station.BENCH, new RecordTwoOpenTogether(p, q, null, null), station.submission()));
        List<Double> bank = station.bank();
        assertThat(bank.get(0)).isCloseTo(bank.get(1), within(1e-6));
        assertThat(bank.get(0)).isBetween(69.0, 72.0);
    }

    @Test
    void oneReadingIsEnoughForTwoThatWereOpenTogether() {
        station.recorded(station.benches
                .keepingTheBank()
                .recordTwoOpenTogether(
                        Station.BENCH,
                        new RecordTwoOpenTogether(p, q, station.reads("68"), null),
                        station.submission()));
        assertThat(station.bank().subList(0, 2))
                .allSatisfy(bar -> assertThat(bar).isCloseTo(68.0, within(1e-6)));
    }

    @Test
    void aCorrectionChangesTheBankAsIfItHadBeenTypedRight() {
        long seq = station.recorded(station.benches
                        .takingReadings()
                        .take(Station.BENCH, new TakeReading(q, station.reads("79")), station.submission()))
                .get(0)
                .seq();
        assertThat(station.bank().get(1)).isCloseTo(79.0, within(1e-6));
        Fact right = new Fact.ReadingTaken(q, station.reads("97"));
        Submission now = station.submission();
        station.recorded(station.benches
                .correctingAnEntry()
                .replace(
                        Station.BENCH,
                        seq,
                        "digits the wrong way round",
                        right,
                        new Submission(now.key(), now.author(), null, false)));
        assertThat(station.bank().get(1)).isCloseTo(97.0, within(1e-6));
        JournalLine line = station.benches.readingTheJournal().getLine(Station.BENCH, seq);
        assertThat(line.correctedBy()).isEqualTo(seq + 1);
        assertThat(station.benches.correctingAnEntry().reverse(Station.BENCH, seq, "again", station.submission()))
                .isEqualTo(new Recording.NotRecorded(Refused.of(Rule.ENTRY_ALREADY_CORRECTED, Long.toString(seq))));
    }

    @Test
    void whatLaterEntriesNeedCannotBeTakenBack() {
        long connected = station.benches.readingTheJournal().listLines(Station.BENCH, 0, 100).stream()
                .filter(line -> line.entry().fact() instanceof Fact.SupplyConnected f
                        && f.supply().equals(q))
                .findFirst()
                .orElseThrow()
                .entry()
                .seq();
        long taken = station.recorded(station.benches
                        .takingReadings()
                        .take(Station.BENCH, new TakeReading(q, station.reads("96")), station.submission()))
                .get(0)
                .seq();
        assertThat(station.benches
                        .correctingAnEntry()
                        .reverse(Station.BENCH, connected, "never came", station.submission()))
                .isEqualTo(new Recording.NotRecorded(Refused.of(Rule.LATER_ENTRY_NEEDS_IT, Long.toString(taken))));
    }

    @Test
    void anEntryFromBeforeItsSupplyCameIsRefused() {
        Submission early = station.submission(Station.TEN.minusSeconds(3600));
        assertThat(station.benches.takingReadings().take(Station.BENCH, new TakeReading(q, station.reads("96")), early))
                .isEqualTo(new Recording.NotRecorded(Refused.of(Rule.SUPPLY_UNKNOWN, "supply-Q")));
    }

    @Test
    void aClockThatIsALittleAheadDoesNotPutEntriesInTheFuture() {
        Submission ahead = station.submission(station.clock.instant().plusSeconds(60));
        assertThat(station.recorded(station.benches
                                .takingReadings()
                                .take(Station.BENCH, new TakeReading(q, station.reads("96")), ahead))
                        .get(0)
                        .origin()
                        .effectiveAt())
                .isEqualTo(station.clock.instant());
    }

    @Test
    void anAuthorIsNamed() {
        Submission nobody = new Submission(station.submission().key(), " ", null, false);
        assertThat(station.benches
                        .takingReadings()
                        .take(Station.BENCH, new TakeReading(q, station.reads("96")), nobody))
                .isEqualTo(new Recording.NotRecorded(Refused.of(Rule.NAME_EMPTY, "author")));
    }

    private FillPlan plan() {
        PlanOutcome outcome =
                station.benches.planningAFill().plan(Station.BENCH, bottle, Station.bar("150"), station.reads("20"));
        if (outcome instanceof FillPlan plan) {
            return plan;
        }
        throw new AssertionError(outcome);
    }

    private List<String> names() {
        return station.benches.keepingTheBank().bank(Station.BENCH).supplies().stream()
                .map(view -> view.supply().details().name())
                .toList();
    }
}
