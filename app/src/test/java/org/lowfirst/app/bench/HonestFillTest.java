package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lowfirst.app.bench.Station.BENCH;
import static org.lowfirst.app.bench.Station.bar;
import static org.lowfirst.app.bench.Station.litres;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.app.honest.BalanceReport;
import org.lowfirst.app.honest.CheckingForLeaks.LeakCheck;
import org.lowfirst.app.honest.FillingInTime.Wish;
import org.lowfirst.app.honest.Outcome;
import org.lowfirst.app.honest.Problem;
import org.lowfirst.app.honest.SpreadPlan;
import org.lowfirst.app.honest.StandingVerdict;
import org.lowfirst.app.honest.StopAdvice;
import org.lowfirst.app.honest.StoppingAndSettling.StatedNow;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.Temperature;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.planning.contents.TimedLeakCheck;
import org.lowfirst.planning.contents.VerdictCode;
import org.lowfirst.planning.warm.FastestFill;
import org.lowfirst.planning.warm.FillInTime.PaceOutcome;
import org.lowfirst.planning.warm.FillSchedule;
import org.lowfirst.planning.warm.SameGas;
import org.lowfirst.planning.warm.StopReason;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.AllowWarmStop;
import org.lowfirst.station.Command.FinishFill;
import org.lowfirst.station.Command.ForbidWarmStop;
import org.lowfirst.station.Command.ReadWarmBottle;
import org.lowfirst.station.Command.RecordFill;
import org.lowfirst.station.Command.RecordStage;
import org.lowfirst.station.Command.RegisterBottle;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.Command.TakeReading;
import org.lowfirst.station.CylinderId;
import org.lowfirst.station.FillId;
import org.lowfirst.station.Material;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Stage;
import org.lowfirst.station.StatedTemperature;
import org.lowfirst.station.SupplyId;
import org.lowfirst.station.WarmStop;

/**
 * Warm fills and what comes of them, through the journal. Expected readings and litres: CoolProp 8.0.0 (Schmidt and Wagner),
 * worked out outside.
 */
class HonestFillTest {

    private static final FillId FILL = new FillId("fill-1");

    @TempDir
    Path directory;

    private Station station;
    private BottleId bottle;

    @BeforeEach
    void open() {
        station = Station.at(directory, "18");
        bottle = new BottleId("bottle-H");
        BottleDetails details = new BottleDetails("H", "Ida", litres("2.0"), bar("200"), Material.STEEL, bar("200"));
        station.recorded(station.benches
                .registeringBottles()
                .register(BENCH, new RegisterBottle(bottle, details, null), station.submission()));
        station.markAndLookAt(bottle);
    }

    @AfterEach
    void close() {
        station.close();
    }

    private Reading reads(String bar, String celsius) {
        return new Reading(
                bar(bar), station.clock.instant(), StatedTemperature.of(celsius, TemperatureUnit.CELSIUS), false, null);
    }

    private void read(CylinderId cylinder, String bar, String celsius) {
        station.recorded(station.benches
                .takingReadings()
                .take(BENCH, new TakeReading(cylinder, reads(bar, celsius)), station.submission()));
    }

    private void start() {
        station.recorded(station.benches
                .guidingAFill()
                .start(BENCH, new StartFill(FILL, bottle, bar("200"), reads("20", "18")), station.submission()));
    }

    private void stage(SupplyId supply, String bottleAfter, String supplyBefore, String supplyAfter) {
        Stage stage = new Stage(supply, reads(bottleAfter, "18"), reads(supplyBefore, "18"), reads(supplyAfter, "18"));
        station.recorded(
                station.benches.guidingAFill().recordStage(BENCH, new RecordStage(FILL, stage), station.submission()));
    }

    private void finish(String after) {
        station.recorded(station.benches
                .guidingAFill()
                .finish(BENCH, new FinishFill(FILL, reads(after, "18")), station.submission()));
    }

    private StandingVerdict verdict(CylinderId cylinder) {
        return findVerdict(cylinder).orElseThrow();
    }

    private Optional<StandingVerdict> findVerdict(CylinderId cylinder) {
        return station.benches.judgingReadings().history(BENCH).find(cylinder).map(now -> now.verdict());
    }

    private static <T> T given(Outcome<T> outcome) {
        if (outcome instanceof Outcome.Given<T> given) {
            return given.value();
        }
        throw new AssertionError(outcome);
    }

    private static Problem declined(Outcome<?> outcome) {
        if (outcome instanceof Outcome.Declined<?> declined) {
            return declined.problem();
        }
        throw new AssertionError(outcome);
    }

    private static GaugePressure ofBar(double bar) {
        return GaugePressure.ofBar(bar);
    }

    private StopAdvice hot() {
        return given(station.benches
                .stoppingAndSettling()
                .forStated(BENCH, new StatedNow(bottle, ofBar(200), Temperature.ofCelsius(58))));
    }

    /** Gauge 200 at 58 C: about 166 bar at 18 C, 350 of 426 L, 82 % full; full it would read 203 at 18 C. */
    @Test
    void aHotBottleIsToldToStopAtTheMarkAndWhatItSettlesTo() {
        StopAdvice advice = hot();
        assertThat(advice.plan().shutNow()).isTrue();
        assertThat(advice.plan().stop().reading().toBar()).isCloseTo(200, within(1e-6));
        assertThat(advice.plan().stop().why()).isEqualTo(StopReason.SERVICE_PRESSURE);
        assertThat(advice.plan().ifShutNow().atBench().toBar()).isCloseTo(166, within(0.6));
        assertThat(advice.plan().ifShutNow().percentFull()).isCloseTo(82, within(0.6));
        assertThat(advice.plan().ifShutNow().freeVolume().toLitres()).isCloseTo(350, within(2.0));
        assertThat(advice.plan().topUp().worthwhile()).isTrue();
        assertThat(advice.sentences().get(1)).contains("166 bar at 18 C").contains("82 % full");
        assertThat(advice.permission()).isNull();
        assertThat(advice.assumed()).anyMatch(text -> text.contains("mass of the wall"));
    }

    @Test
    void theMorningAfterIsNormalAndFourteenBarLessIsALikelyLeak() {
        SupplyId supply = station.supply("C", "194");
        start();
        station.clock.forward(Duration.ofMinutes(3));
        stage(supply, "190", "194", "193");
        finish("190");
        station.clock.forward(Duration.ofHours(4));
        read(bottle, "166", "18");
        station.clock.forward(Duration.ofHours(12));
        read(bottle, "153", "2");
        assertThat(verdict(bottle).name()).isEqualTo("inside gauge uncertainty");
        station.clock.forward(Duration.ofMinutes(5));
        read(bottle, "139", "2");
        assertThat(verdict(bottle).code()).isEqualTo(VerdictCode.LIKELY_LEAK);
    }

    /** The only reading before the morning is the hot one at the stop: gauge 200, gas 58 C; 153 bar at 2 C is what it comes to. */
    @ParameterizedTest
    @CsvSource({"153, INSIDE_GAUGE_UNCERTAINTY", "139, LIKELY_LEAK"})
    void theMorningAfterIsHeldAgainstTheHotStopWhenItsGasTemperatureWasNoted(String morning, VerdictCode expected) {
        SupplyId supply = station.supply("C", "206");
        start();
        station.clock.forward(Duration.ofMinutes(3));
        stage(supply, "200", "206", "205");
        finish("200");
        station.recorded(station.benches
                .takingReadings()
                .takeWarm(
                        BENCH,
                        new ReadWarmBottle(
                                bottle, reads("200", "18"), StatedTemperature.of("58", TemperatureUnit.CELSIUS)),
                        station.submission()));
        station.clock.forward(Duration.ofMinutes(5));
        read(bottle, "197", "18");
        station.clock.forward(Duration.ofHours(15));
        read(bottle, morning, "2");
        assertThat(verdict(bottle).code()).isEqualTo(expected);
        assertThat(verdict(bottle).verdict().evidence().expected().toBar()).isBetween(151.0, 155.0);
    }

    /** Nobody said how warm the gas was: the journal alone accuses nobody. */
    @Test
    void withoutAGasTemperatureTheMorningAfterStartsAnew() {
        SupplyId supply = station.supply("C", "206");
        start();
        station.clock.forward(Duration.ofMinutes(3));
        stage(supply, "200", "206", "205");
        finish("200");
        station.clock.forward(Duration.ofHours(15));
        read(bottle, "139", "2");
        assertThat(findVerdict(bottle)).isEmpty();
    }

    @Test
    void aBottleThatWasAwayIsNotAccused() {
        read(bottle, "166", "18");
        station.clock.forward(Duration.ofDays(2));
        read(bottle, "90", "18");
        assertThat(findVerdict(bottle)).isEmpty();
    }

    @Test
    void theStopRisesAboveTheMarkOnlyWhileThatIsAllowed() {
        assertThat(hot().plan().stop().reading().toBar()).isCloseTo(200, within(1e-6));
        WarmStop permission = new WarmStop("Ida", "table of the bench, sheet 4");
        station.recorded(
                station.benches.allowingWarmStops().allow(BENCH, new AllowWarmStop(permission), station.submission()));
        assertThat(station.benches.allowingWarmStops().permission(BENCH)).contains(permission);
        StopAdvice allowed = hot();
        assertThat(allowed.plan().stop().reading().toBar()).isBetween(220.0, 260.0);
        assertThat(allowed.plan().ifShutAtStop().atReference().toBar()).isLessThanOrEqualTo(200.0 + 1e-6);
        assertThat(allowed.permission()).isEqualTo(permission);
        assertThat(allowed.cautions(Locale.ENGLISH)).anyMatch(text -> text.contains("marked service pressure"));
        station.recorded(
                station.benches.allowingWarmStops().forbid(BENCH, new ForbidWarmStop("Ida"), station.submission()));
        assertThat(station.benches.allowingWarmStops().permission(BENCH)).isEmpty();
        assertThat(hot().plan().stop().reading().toBar()).isCloseTo(200, within(1e-6));
    }

    @Test
    void anOpenFillIsFollowedByItsReadings() {
        SupplyId supply = station.supply("C", "194");
        assertThat(declined(stop(null)).code()).isEqualTo("no-open-fill");
        start();
        assertThat(declined(stop(null)).code()).isEqualTo("too-few-readings");
        station.clock.forward(Duration.ofMinutes(4));
        stage(supply, "140", "194", "189");
        station.clock.forward(Duration.ofMinutes(2));
        StopAdvice advice = given(stop(reads("170", "18")));
        assertThat(advice.plan().now().gasComputed()).isTrue();
        assertThat(advice.plan().now().gas().toCelsius()).isBetween(19.0, 70.0);
        assertThat(advice.plan().ifShutNow().atBench().toBar()).isLessThan(170);
        assertThat(declined(stop(reads("120", "18"))).code()).isEqualTo("sequence-falls");
    }

    private Outcome<StopAdvice> stop(@Nullable Reading now) {
        return station.benches.stoppingAndSettling().forOpenFill(BENCH, now, null);
    }

    @Test
    void aTemperatureNobodyMeansIsDeclinedWithLimitAndAdvice() {
        Problem problem = declined(station.benches
                .stoppingAndSettling()
                .forStated(BENCH, new StatedNow(bottle, ofBar(200), Temperature.ofCelsius(400))));
        assertThat(problem.code()).isEqualTo("temperature-out-of-range");
        assertThat(problem.measured()).isEqualTo("400 C");
        assertThat(problem.limit()).isNotBlank();
        assertThat(problem.advice()).startsWith("Please");
    }

    /**
     * 70, 128 and 194 bar at 17 C before four fills, 63, 113 and 181 after: 1,845 L left by the gauges, 1,657 L entered when
     * settled.
     */
    @Test
    void aMonthsGasIsInsideGaugeUncertainty() {
        SupplyId a = station.supply("A", "70");
        SupplyId b = station.supply("B", "128");
        SupplyId c = station.supply("C", "194");
        fill("M-03", "5", "62", "150");
        fill("M-11", "2", "30", "180");
        fill("M-19", "3", "95", "150");
        fill("V-02", "5", "20", "150");
        station.clock.forward(Duration.ofHours(4));
        read(a, "63", "18");
        read(b, "113", "18");
        read(c, "181", "18");
        BalanceReport report =
                given(station.benches.judgingReadings().balance(BENCH, Station.TEN, station.clock.instant()));
        assertThat(report.balance().code()).isEqualTo(VerdictCode.INSIDE_GAUGE_UNCERTAINTY);
        assertThat(report.name()).isEqualTo("inside gauge uncertainty");
        assertThat(litresOf(report.balance().left_mol())).isCloseTo(1_845, within(30.0));
        assertThat(litresOf(report.balance().entered_mol())).isBetween(1_520.0, 1_660.0);
        assertThat(litresOf(report.balance().supplies().get(0).limit_mol())).isCloseTo(265, within(10.0));
    }

    /** Molar volume of oxygen at 15 C and one atmosphere: 23.628 L/mol. */
    private static double litresOf(double amount_mol) {
        return amount_mol * 23.628;
    }

    private void fill(String name, String litres, String before, String after) {
        BottleId id = station.bottle(name, litres, before);
        station.clock.forward(Duration.ofMinutes(20));
        Instant at = station.clock.instant();
        RecordFill fill = new RecordFill(
                new FillId("fill-" + name), id, null, station.reads(before, at), station.reads(after, at), List.of());
        station.recorded(station.benches.guidingAFill().recordFill(BENCH, fill, station.submission()));
    }

    @Test
    void aFillIsWeighedAgainstItsSupply() {
        SupplyId supply = station.supply("C", "194");
        start();
        station.clock.forward(Duration.ofMinutes(4));
        stage(supply, "180", "194", "187");
        finish("180");
        BalanceReport report = given(station.benches.judgingReadings().balance(BENCH, FILL));
        assertThat(report.balance().code()).isEqualTo(VerdictCode.INSIDE_GAUGE_UNCERTAINTY);
        assertThat(report.sentence()).contains("inside gauge uncertainty");
    }

    @Test
    void aPlanSaysHowFarItMayBeOff() {
        station.supply("A", "95");
        station.supply("C", "194");
        FillPlan plan = (FillPlan) station.benches.planningAFill().plan(BENCH, bottle, bar("150"), reads("20", "18"));
        SpreadPlan spread = station.benches.spreadingAPlan().spread(BENCH, plan, false);
        assertThat(spread.stages()).hasSize(2);
        assertThat(spread.stages().get(0)).matches("\\d+ bar, within \\d+");
        assertThat(spread.stages().get(1)).isEqualTo("150 bar");
        assertThat(spread.fillsLeft()).contains("and a").contains("%");
    }

    @Test
    void aFillIsPutOnAClock() {
        station.supply("A", "95");
        station.supply("C", "194");
        Wish wish = new Wish(bottle, ofBar(20), ofBar(150), null, null);
        FillSchedule schedule = given(station.benches.fillingInTime().schedule(BENCH, wish));
        assertThat(schedule.totalMinutes()).isBetween(8.0, 30.0);
        assertThat(schedule.series()).hasSizeGreaterThan(10);
        assertThat(schedule.request().pace().rate().toPerMinute(PressureUnit.PSI))
                .isCloseTo(200, within(1e-6));
        List<PaceOutcome> paces = given(station.benches.fillingInTime().compare(BENCH, wish));
        assertThat(paces).hasSize(4);
        assertThat(paces.get(0).total_s()).isGreaterThan(paces.get(3).total_s());
        assertThat(paces.get(0).peakBottleGas()).isLessThan(paces.get(3).peakBottleGas());
        FastestFill fastest = given(station.benches.fillingInTime().fastest(BENCH, wish, 5.0));
        assertThat(fastest.schedule().percentOfWanted()).isGreaterThanOrEqualTo(95.0);
    }

    @Test
    void aTimedCheckFailsWhenTooMuchIsLostAndIsNoneWhenItsConditionsAreNotKept() {
        SupplyId supply = station.supply("A", "142");
        Instant settled = station.clock.instant().minus(Duration.ofHours(12));
        Reading first = reads("142", "18");
        station.clock.forward(Duration.ofHours(12));
        Reading second = reads("130", "18");
        LeakCheck check = given(station.benches.checkingForLeaks().check(BENCH, supply, settled, first, second));
        assertThat(check.check().drop().toBar()).isCloseTo(12, within(0.1));
        assertThat(check.check().outcome()).isEqualTo(TimedLeakCheck.Outcome.FAILED);
        assertThat(check.sentences().get(0)).contains("12.0 bar");
        assertThat(declined(station.benches.checkingForLeaks().check(BENCH, supply, settled, second, first))
                        .code())
                .isEqualTo("second-not-later");
        assertThat(declined(station.benches
                                .checkingForLeaks()
                                .check(BENCH, supply, settled, first, reads("142", "200")))
                        .advice())
                .startsWith("Please");
    }

    @Test
    void aReadingIsToldAtAnotherTemperature() {
        SameGas same = given(station.benches
                .askingOtherTemperatures()
                .ask(BENCH, bottle, ofBar(200), Temperature.ofCelsius(58), List.of(Temperature.ofCelsius(2))));
        assertThat(same.readings().get(0).reading().toBar()).isCloseTo(152.8, within(0.05));
        assertThat(same.full()).isNotNull();
    }
}
