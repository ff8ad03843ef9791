package org.lowfirst.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lowfirst.app.fitness.FindingLine;
import org.lowfirst.app.fitness.FitnessReport;
import org.lowfirst.app.fitness.FitnessWord;
import org.lowfirst.app.journal.Journal;
import org.lowfirst.app.journal.Opening;
import org.lowfirst.gas.Oxygen;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.gas.TemperatureUnit;
import org.lowfirst.gas.VolumeUnit;
import org.lowfirst.planning.FillPlan;
import org.lowfirst.station.BenchId;
import org.lowfirst.station.BottleDetails;
import org.lowfirst.station.BottleId;
import org.lowfirst.station.Command.ConnectSupply;
import org.lowfirst.station.Command.RecordFill;
import org.lowfirst.station.Command.RegisterBottle;
import org.lowfirst.station.Command.StartFill;
import org.lowfirst.station.EntryKey;
import org.lowfirst.station.FillId;
import org.lowfirst.station.MarkedPlate;
import org.lowfirst.station.Marking;
import org.lowfirst.station.Reading;
import org.lowfirst.station.Refused;
import org.lowfirst.station.Rule;
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
import org.lowfirst.station.rules.Answer;
import org.lowfirst.station.rules.Service;
import org.lowfirst.station.rules.TestMark;
import org.lowfirst.station.rules.WallMaterial;

/**
 * One morning at an invented club in the United States, through the journal: seven bottles, each its own way. Today is 14 June
 * 2026, 70 F. Test intervals: 49 CFR 180.209(a) table 1; life and cycles of 3HT: AC 43.13-1B change 1 p. 9-42; limit at 70 F: 49
 * CFR 173.301a(c).
 */
class FitToFillTest {

    private static final BenchId PINEFOLD = new BenchId("pinefold");
    private static final Instant NOW = Instant.parse("2026-06-14T15:00:00Z");

    @TempDir
    private Path directory;

    private SetClock clock;
    private Benches benches;
    private int keys;

    @BeforeEach
    void open() {
        clock = new SetClock(NOW);
        Opening.Opened opened = (Opening.Opened) Journal.open(directory.resolve("lowfirst.db"));
        benches = new Benches(opened.journal(), clock, Oxygen.schmidtWagner(), Locale.ENGLISH);
        Settings settings = new Settings(
                "Pinefold Aero Club",
                Units.US,
                RuleSet.US,
                new Surroundings(
                        temperature("70"), StatedAbsolutePressure.STANDARD, StatedVolume.of("0", VolumeUnit.LITRE)),
                psi("2200"),
                List.of("A. Moss", "R. Fern"));
        recorded(benches.openingABench().open(PINEFOLD, settings, submission()));
        SupplyDetails supply = new SupplyDetails("H1", null, litres("46.5"), psi("2265"));
        recorded(benches.keepingTheBank()
                .connect(PINEFOLD, new ConnectSupply(new SupplyId("h1"), supply, reads("2200")), submission()));
    }

    @AfterEach
    void close() {
        benches.close();
    }

    @Test
    void b21TestedFiveYearsAgoThisMonthMayBeFilledAndHasSixteenDays() {
        BottleId b21 =
                bottle("B-21", "1800", "600", marking("3AA", WallMaterial.STEEL, "2006-06", TestMark.of(2021, 6)));
        assertThat(report(b21).word()).isEqualTo(FitnessWord.TO_LOOK_AT);
        lookAt(b21);
        FitnessReport report = report(b21);
        assertThat(report.word()).isEqualTo(FitnessWord.FIT_WITH_NOTE);
        assertThat(report.headline()).isEqualTo("Fit, with a note, 16 days left");
        assertThat(report.lines().notes()).singleElement().satisfies(note -> {
            assertThat(note.sentence()).isEqualTo("Its test is good to 30 Jun 2026: 16 days left. Plan the next test.");
            assertThat(note.left()).isEqualTo("16 days");
            assertThat(note.source()).contains("49 CFR 180.209(a)");
            assertThat(note.status()).isEqualTo("the text was read");
        });
        assertThat(start(b21, "1800", "600")).isInstanceOf(Recording.Recorded.class);
    }

    @Test
    void b22PastDueMayBeUsedUpAndIsNotFilledNotEvenInPart() {
        BottleId b22 =
                bottle("B-22", "1800", "1240", marking("3AA", WallMaterial.STEEL, "2006-05", TestMark.of(2021, 5)));
        lookAt(b22);
        FitnessReport report = report(b22);
        assertThat(report.word()).isEqualTo(FitnessWord.USE_UP);
        assertThat(report.lines().refusals())
                .extracting(FindingLine::sentence)
                .containsExactly(
                        "Its test was good to 31 May 2026. What it holds may be used up; no fill, not even a part,"
                                + " until it is tested.");
        assertThat(report.toSetAside()).isEmpty();
        assertThat(start(b22, "1241", "1240")).isEqualTo(unfit("B-22"));
        assertThat(recordFill(b22, "1240", "1500")).isInstanceOf(Recording.Recorded.class);
        assertThat(benches.readingTheJournal().listLines(PINEFOLD, 0, 1).get(0).note())
                .isEqualTo("By its marking as known now, B-22 was past its test that day: it was not to be filled.");
    }

    @Test
    void b23LightTypeIsRetiredWhenItsLifeIsOver() {
        BottleId b23 =
                bottle("B-23", "1850", "900", marking("3HT", WallMaterial.STEEL, "2002-05", TestMark.of(2024, 2)));
        lookAt(b23);
        FitnessReport report = report(b23);
        assertThat(report.word()).isEqualTo(FitnessWord.LIFE_OVER);
        assertThat(report.lines().refusals())
                .extracting(FindingLine::sentence)
                .contains("Its life ended on 31 May 2026. Take it out of use; it is not filled any more.");
        assertThat(start(b23, "1800", "900")).isEqualTo(unfit("B-23"));
    }

    @Test
    void b24LightTypeHasNineFillsLeftAndEachFillTakesOne() {
        Marking light = marking("3HT", WallMaterial.STEEL, "2010-03", TestMark.of(2024, 3));
        BottleId b24 = bottle("B-24", "1850", "900", fillsBefore(light, 4_370));
        recorded(recordFill(b24, "300", "900"));
        lookAt(b24);
        FitnessReport report = report(b24);
        assertThat(report.headline()).contains("9 fills left");
        assertThat(report.lines().notes())
                .extracting(FindingLine::sentence)
                .contains("4371 of 4380 fills are used: 9 fills left. Plan for another.");
        assertThat(start(b24, "1800", "900")).isInstanceOf(Recording.Recorded.class);
    }

    @Test
    void b25ReadingZeroIsInspectedAndCleanedFirst() {
        BottleId b25 =
                bottle("B-25", "2015", "0", marking("3AL", WallMaterial.ALUMINIUM, "2020-01", TestMark.of(2025, 1)));
        lookAt(b25);
        assertThat(report(b25).word()).isEqualTo(FitnessWord.UNFIT);
        assertThat(report(b25).lines().refusals())
                .extracting(FindingLine::sentence)
                .containsExactly(
                        "It reads 0 psi, less than 25 psi, or its valve stood open. Have it inspected and cleaned"
                                + " first.");
        assertThat(start(b25, "1800", "0")).isEqualTo(unfit("B-25"));
        recorded(benches.keepingMarkings().inspected(PINEFOLD, b25, "test shop", submission()));
        assertThat(start(b25, "1800", "0")).isInstanceOf(Recording.Recorded.class);
    }

    @Test
    void b26IsCappedAtItsMarkSettledAt70FHoweverMuchIsWanted() {
        BottleId b26 =
                bottle("B-26", "1800", "300", marking("3AA", WallMaterial.STEEL, "2012-08", TestMark.of(2022, 8)));
        lookAt(b26);
        FitnessReport report = benches.judgingFitness().forFill(PINEFOLD, b26, psi("2015"), reads("300"));
        assertThat(report.mayBeFilled()).isTrue();
        assertThat(report.lines().caps())
                .extracting(FindingLine::sentence)
                .anySatisfy(sentence -> assertThat(sentence)
                        .isEqualTo("2,015 psi at 70 F is more than it may hold, 1,800 psi at 70 F. Fill to 1,800 psi at"
                                + " 70 F at most."));
        assertThat(benches.judgingFitness().allowed(PINEFOLD, b26, psi("2015"))).isEqualTo(psi("1800"));
        assertThat(start(b26, "2015", "300"))
                .isEqualTo(new Recording.NotRecorded(
                        new Refused(Rule.TARGET_ABOVE_SERVICE_PRESSURE, "B-26", psi("2015"), psi("1800"))));
        FillPlan plan = (FillPlan) benches.planningAFill().plan(PINEFOLD, b26, psi("2015"), reads("300"));
        assertThat(plan.stop().reading().to(PressureUnit.PSI)).isCloseTo(1_800, within(0.01));
        assertThat(plan.stop().neverAbove().to(PressureUnit.PSI)).isCloseTo(1_800, within(0.01));
    }

    /** The same contents at 40 F by the equation of state, from 1,800 psi at 70 F: CoolProp 8.0.0 gives 1,661 psi. */
    @Test
    void onAColdDayTheCapIsLowerByTheRealGas() {
        BottleId b26 =
                bottle("B-26", "1800", "300", marking("3AA", WallMaterial.STEEL, "2012-08", TestMark.of(2022, 8)));
        Reading cold = new Reading(psi("300"), clock.instant(), temperature("40"), false, null);
        assertThat(benches.judgingFitness().findMost(PINEFOLD, b26, cold))
                .hasValueSatisfying(
                        most -> assertThat(most.to(PressureUnit.PSI)).isCloseTo(1_661, within(2.0)));
    }

    @Test
    void b26GoesHigherOnlyByAPlusThatIsMarkedAndEnteredWithItsSource() {
        TestMark plus = new TestMark(YearMonth.of(2022, 8), true, false, "");
        BottleId b26 = bottle("B-26", "1800", "300", marking("3AA", WallMaterial.STEEL, "2012-08", plus));
        lookAt(b26);
        assertThat(benches.judgingFitness().allowed(PINEFOLD, b26, psi("2015"))).isEqualTo(psi("1800"));
        recorded(benches.keepingMarkings().enterPlus(PINEFOLD, b26, "requalification report 7", submission()));
        assertThat(benches.judgingFitness().allowed(PINEFOLD, b26, psi("2015"))).isEqualTo(psi("1980.0"));
        FillPlan plan = (FillPlan) benches.planningAFill().plan(PINEFOLD, b26, psi("2015"), reads("300"));
        assertThat(plan.stop().neverAbove().to(PressureUnit.PSI)).isCloseTo(1_980, within(0.01));
        assertThat(start(b26, "1980", "300")).isInstanceOf(Recording.Recorded.class);
    }

    @Test
    void b27WithoutAReadableStampIsRefused() {
        BottleId b27 = bottle("B-27", "1800", "500", null);
        lookAt(b27);
        assertThat(report(b27).word()).isEqualTo(FitnessWord.NOT_ENTERED);
        assertThat(start(b27, "1800", "500")).isEqualTo(unfit("B-27"));
        Marking unreadable = new Marking(
                null,
                new MarkedPlate(null, WallMaterial.UNKNOWN, null, null),
                null,
                Service.oxygen("CGA 540"),
                null,
                null);
        recorded(benches.keepingMarkings().mark(PINEFOLD, b27, unreadable, submission()));
        assertThat(report(b27).word()).isEqualTo(FitnessWord.UNFIT);
        assertThat(report(b27).lines().refusals())
                .extracting(FindingLine::sentence)
                .contains(
                        "The specification cannot be read. Clean the stamp and read it again; without it there is no fill.");
        assertThat(start(b27, "1800", "500")).isEqualTo(unfit("B-27"));
    }

    @Test
    void everyRuleOfTheBookCanBeChangedAndSaysWhereItComesFrom() {
        BottleId b21 =
                bottle("B-21", "1800", "600", marking("3AA", WallMaterial.STEEL, "2006-06", TestMark.of(2021, 6)));
        String text = benches.keepingRules().builtInText(PINEFOLD);
        assertThat(benches.keepingRules().isBuiltIn(PINEFOLD)).isTrue();
        recorded(benches.keepingRules()
                .adopt(
                        PINEFOLD,
                        text.replace("specifications = 3A, 3AA\nyears = 5", "specifications = 3A, 3AA\nyears = 4"),
                        submission()));
        assertThat(report(b21).word()).isEqualTo(FitnessWord.USE_UP);
        assertThat(benches.keepingRules().isBuiltIn(PINEFOLD)).isFalse();
        recorded(benches.keepingRules().adopt(PINEFOLD, text, submission()));
        assertThat(report(b21).word()).isEqualTo(FitnessWord.TO_LOOK_AT);
        assertThat(benches.keepingRules().listVersions(PINEFOLD)).hasSize(2);
        assertThat(benches.keepingRules()
                        .inWords(PINEFOLD, benches.keepingRules().book(PINEFOLD)))
                .allSatisfy(rule -> {
                    assertThat(rule.sentence()).isNotBlank().doesNotContain("{");
                    assertThat(rule.source()).isNotBlank();
                    assertThat(text).contains(rule.block());
                })
                .anySatisfy(rule -> assertThat(rule.sentence()).isEqualTo("Tested every 3 years: 3HT."));
    }

    @Test
    void aDoubtIsTakenOnByASecondPersonForOneFill() {
        Marking sound = marking("3AA", WallMaterial.STEEL, "2012-08", TestMark.of(2022, 8));
        BottleId bottle = bottle("B-28", "1800", "300", sound);
        Map<String, Answer> answers = new HashMap<>();
        report(bottle).questions().forEach(question -> answers.put(question.code(), Answer.NO));
        answers.put("corroded", Answer.NOT_SURE);
        recorded(benches.keepingMarkings().answer(PINEFOLD, bottle, answers, submission()));
        FitnessReport doubtful = report(bottle);
        assertThat(doubtful.word()).isEqualTo(FitnessWord.UNFIT);
        assertThat(doubtful.lines().refusals())
                .extracting(FindingLine::sentence)
                .containsExactly("Corroded or pitted: not sure. A second person looks at it first.");
        assertThat(start(bottle, "1800", "300")).isEqualTo(unfit("B-28"));
        recorded(benches.keepingMarkings()
                .setAside(
                        PINEFOLD,
                        bottle,
                        doubtful.toSetAside(),
                        "A. Moss",
                        "surface rust only",
                        Submission.now(new EntryKey("second"), "R. Fern")));
        assertThat(report(bottle).word()).isEqualTo(FitnessWord.SET_ASIDE);
        assertThat(start(bottle, "1800", "300")).isInstanceOf(Recording.Recorded.class);
        assertThat(report(bottle).word()).isEqualTo(FitnessWord.UNFIT);
    }

    @Test
    void aYesSendsItAwayWhoeverAsks() {
        BottleId bottle =
                bottle("B-29", "1800", "300", marking("3AA", WallMaterial.STEEL, "2012-08", TestMark.of(2022, 8)));
        Map<String, Answer> answers = new HashMap<>();
        report(bottle).questions().forEach(question -> answers.put(question.code(), Answer.NO));
        answers.put("oil-or-grease", Answer.YES);
        recorded(benches.keepingMarkings().answer(PINEFOLD, bottle, answers, submission()));
        assertThat(report(bottle).word()).isEqualTo(FitnessWord.UNFIT);
        assertThat(report(bottle).toSetAside()).isEmpty();
        assertThat(start(bottle, "1800", "300")).isEqualTo(unfit("B-29"));
    }

    @Test
    void answersAreGoodForTheirDay() {
        BottleId bottle =
                bottle("B-30", "1800", "300", marking("3AA", WallMaterial.STEEL, "2012-08", TestMark.of(2022, 8)));
        lookAt(bottle);
        assertThat(report(bottle).word()).isEqualTo(FitnessWord.FIT);
        clock.set(NOW.plusSeconds(24 * 3600));
        assertThat(report(bottle).word()).isEqualTo(FitnessWord.TO_LOOK_AT);
        assertThat(start(bottle, "1800", "300")).isEqualTo(unfit("B-30"));
    }

    private FitnessReport report(BottleId bottle) {
        return benches.judgingFitness().ofBottle(PINEFOLD, bottle);
    }

    private void lookAt(BottleId bottle) {
        Map<String, Answer> answers = new HashMap<>();
        report(bottle).questions().forEach(question -> answers.put(question.code(), Answer.NO));
        recorded(benches.keepingMarkings().answer(PINEFOLD, bottle, answers, submission()));
    }

    private BottleId bottle(String name, String marked, String reads, @Nullable Marking marking) {
        BottleId id = new BottleId(name.toLowerCase(Locale.ROOT));
        BottleDetails details = new BottleDetails(name, "Club", litres("9"), psi(marked), null, null);
        recorded(benches.registeringBottles()
                .register(PINEFOLD, new RegisterBottle(id, details, reads(reads)), submission()));
        if (marking != null) {
            recorded(benches.keepingMarkings().mark(PINEFOLD, id, marking, submission()));
        }
        return id;
    }

    private static Marking marking(String code, WallMaterial material, String made, TestMark tested) {
        MarkedPlate plate = new MarkedPlate(code, material, null, YearMonth.parse(made));
        return new Marking(null, plate, tested, Service.oxygen("CGA 540"), 0, null);
    }

    private static Marking fillsBefore(Marking marking, int fills) {
        return new Marking(
                marking.stamp(), marking.plate(), marking.lastTest(), marking.service(), fills, marking.permit());
    }

    private Recording start(BottleId bottle, String target, String before) {
        FillId fill = new FillId("fill-" + (keys + 1));
        StartFill command = new StartFill(fill, bottle, psi(target), reads(before));
        return benches.guidingAFill().start(PINEFOLD, command, submission());
    }

    private Recording recordFill(BottleId bottle, String before, String after) {
        FillId fill = new FillId("fill-" + (keys + 1));
        return benches.guidingAFill()
                .recordFill(
                        PINEFOLD,
                        new RecordFill(fill, bottle, null, reads(before), reads(after), List.of()),
                        submission());
    }

    private static Recording unfit(String name) {
        return new Recording.NotRecorded(Refused.of(Rule.BOTTLE_UNFIT, name));
    }

    private Submission submission() {
        keys++;
        clock.forward(Duration.ofSeconds(20));
        return Submission.now(new EntryKey("key-" + keys), "A. Moss");
    }

    private static void recorded(Recording recording) {
        assertThat(recording).isInstanceOf(Recording.Recorded.class);
    }

    private Reading reads(String psi) {
        return new Reading(psi(psi), clock.instant(), temperature("70"), false, null);
    }

    private static StatedTemperature temperature(String fahrenheit) {
        return StatedTemperature.of(fahrenheit, TemperatureUnit.FAHRENHEIT);
    }

    private static StatedPressure psi(String value) {
        return StatedPressure.of(value, PressureUnit.PSI);
    }

    private static WaterVolume litres(String value) {
        return WaterVolume.stamped(StatedVolume.of(value, VolumeUnit.LITRE));
    }
}
