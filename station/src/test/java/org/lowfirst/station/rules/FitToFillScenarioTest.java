package org.lowfirst.station.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.station.rules.Cylinders.AT_70_F;
import static org.lowfirst.station.rules.Cylinders.TODAY;
import static org.lowfirst.station.rules.Cylinders.contents;
import static org.lowfirst.station.rules.Cylinders.cylinder;
import static org.lowfirst.station.rules.Cylinders.finding;
import static org.lowfirst.station.rules.Cylinders.plate;
import static org.lowfirst.station.rules.Cylinders.reads;

import java.time.LocalDate;
import java.time.YearMonth;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;

/** One morning at an invented club: seven cylinders, each its own way. Today is 14 June 2026. */
class FitToFillScenarioTest {

    private final RuleBook us = BuiltInBooks.us();

    @Test
    void b21TestedFiveYearsAgoThisMonthIsFilledWithAWarningOfSixteenDays() {
        Judgement judgement = us.judge(
                cylinder(
                        "B-21",
                        plate("3AA", WallMaterial.STEEL, 1_800, YearMonth.of(2006, 6)),
                        TestMark.of(2021, 6),
                        reads(600)),
                TODAY);

        assertThat(judgement.overall()).isEqualTo(Verdict.ALLOW_WITH_WARNING);
        assertThat(judgement.fitness()).isInstanceOf(Fitness.FitWithWarnings.class);
        Finding test = finding(judgement, "us.past-due");
        assertThat(test.advice()).isEqualTo(Advice.RETEST_SOON);
        assertThat(test.limit()).isEqualTo(new Measure.OfDate(LocalDate.of(2026, 6, 30)));
        assertThat(test.left()).isEqualTo(new Measure.OfDays(16));
        assertThat(test.basis()).extracting("id").isEqualTo("us.retest.3a");
    }

    @Test
    void b22PastDueMayBeUsedUpButNotFilledNotEvenInPart() {
        Judgement judgement = us.judge(
                cylinder(
                        "B-22",
                        plate("3AA", WallMaterial.STEEL, 1_800, YearMonth.of(2006, 5)),
                        TestMark.of(2021, 5),
                        reads(1_240)),
                TODAY);

        assertThat(judgement.fitness()).isInstanceOf(Fitness.UseUpOnly.class);
        assertThat(((Fitness.UseUpOnly) judgement.fitness()).holds()).isEqualTo(GaugePressure.ofPsi(1_240));
        Finding test = finding(judgement, "us.past-due");
        assertThat(test.advice()).isEqualTo(Advice.USE_UP_THEN_RETEST);
        assertThat(test.left()).isEqualTo(new Measure.OfDays(-14));

        // A part of a fill is a fill: however little is wanted, the answer is the same.
        Judgement topOff = us.judge(
                cylinder(
                                "B-22",
                                plate("3AA", WallMaterial.STEEL, 1_800, YearMonth.of(2006, 5)),
                                TestMark.of(2021, 5),
                                reads(1_240))
                        .wanting(contents(1_241, 1_420)),
                TODAY);
        assertThat(topOff.fitness()).isInstanceOf(Fitness.UseUpOnly.class);
        assertThat(topOff.fitness().mayBeFilled()).isFalse();
    }

    @Test
    void b23LightTypeIsRetiredWhenItsLifeIsOverThoughItsTestIsValid() {
        Judgement judgement = us.judge(
                cylinder(
                        "B-23",
                        plate("3HT", WallMaterial.STEEL, 1_850, YearMonth.of(2002, 5)),
                        TestMark.of(2024, 2),
                        reads(900, 1_200)),
                TODAY);

        assertThat(judgement.fitness()).isInstanceOf(Fitness.LifeOver.class);
        Finding life = finding(judgement, "us.life.3ht");
        assertThat(life.advice()).isEqualTo(Advice.RETIRE_LIFE_OVER);
        assertThat(life.limit()).isEqualTo(new Measure.OfDate(LocalDate.of(2026, 5, 31)));
        assertThat(life.override()).isEqualTo(OverridePolicy.NEVER);
        assertThat(finding(judgement, "us.past-due").verdict()).isEqualTo(Verdict.ALLOW);
    }

    @Test
    void b24LightTypeHasNineFillsLeft() {
        Judgement judgement = us.judge(
                cylinder(
                        "B-24",
                        plate("3HT", WallMaterial.STEEL, 1_850, YearMonth.of(2010, 3)),
                        TestMark.of(2024, 3),
                        reads(900, 4_371)),
                TODAY);

        assertThat(judgement.fitness().mayBeFilled()).isTrue();
        Finding cycles = finding(judgement, "us.cycles.3ht");
        assertThat(cycles.verdict()).isEqualTo(Verdict.ALLOW_WITH_WARNING);
        assertThat(cycles.measured()).isEqualTo(new Measure.OfFills(4_371));
        assertThat(cycles.limit()).isEqualTo(new Measure.OfFills(4_380));
        assertThat(cycles.left()).isEqualTo(new Measure.OfFills(9));
    }

    @Test
    void b25ReadingZeroIsInspectedAndCleanedFirst() {
        Judgement judgement = us.judge(
                cylinder(
                        "B-25",
                        plate("3AL", WallMaterial.ALUMINIUM, 2_015, YearMonth.of(2020, 1)),
                        TestMark.of(2025, 1),
                        reads(0)),
                TODAY);

        assertThat(judgement.fitness()).isInstanceOf(Fitness.Unfit.class);
        assertThat(judgement.refusals()).singleElement().satisfies(refusal -> {
            assertThat(refusal.rule().id()).isEqualTo("us.residual-floor");
            assertThat(refusal.advice()).isEqualTo(Advice.INSPECT_AND_CLEAN_FIRST);
            assertThat(refusal.measured()).isEqualTo(new Measure.OfPressure(GaugePressure.ZERO, null));
            assertThat(refusal.limit()).isEqualTo(new Measure.OfPressure(GaugePressure.ofPsi(25), null));
        });
    }

    @Test
    void b26TargetAboveTheRatingIsCappedAtTheRatingSettledAt70F() {
        CylinderFacts rated1800 = cylinder(
                "B-26",
                plate("3AA", WallMaterial.STEEL, 1_800, YearMonth.of(2012, 8)),
                TestMark.of(2022, 8),
                reads(300));

        // 2,015 psi at 70 F is 2,337 psi at 131 F; 1,800 psi is 2,080 psi (real gas, computed outside the project).
        Judgement judgement = us.judge(rated1800.wanting(contents(2_015, 2_337)), TODAY);

        assertThat(judgement.fitness()).isInstanceOf(Fitness.TargetTooHigh.class);
        Finding rating = finding(judgement, "us.service-pressure");
        assertThat(rating.advice()).isEqualTo(Advice.CAP_TARGET);
        assertThat(rating.measured()).isEqualTo(new Measure.OfPressure(GaugePressure.ofPsi(2_015), AT_70_F));
        assertThat(rating.limit()).isEqualTo(new Measure.OfPressure(GaugePressure.ofPsi(1_800), AT_70_F));
        assertThat(rating.override()).isEqualTo(OverridePolicy.NEVER);
        assertThat(judgement.findLowestLimit(AT_70_F).orElseThrow().most().pressure())
                .isEqualTo(GaugePressure.ofPsi(1_800));

        assertThat(us.judge(rated1800.wanting(contents(1_800, 2_080)), TODAY).fitness())
                .isInstanceOf(Fitness.Fit.class);
    }

    @Test
    void b26IsOnlyFilledHigherWithAPlusRatingMarkedAndEnteredWithItsSource() {
        Nameplate steel = plate("3AA", WallMaterial.STEEL, 1_800, YearMonth.of(2012, 8));
        TestMark plusMarked = new TestMark(YearMonth.of(2022, 8), true, false, "");
        CylinderFacts marked = cylinder("B-26", steel, plusMarked, reads(300)).wanting(contents(1_980, 2_295));
        PlusEntry entry = new PlusEntry("requalification report, invented", "R. Fern");

        assertThat(us.judge(marked, TODAY).fitness()).isInstanceOf(Fitness.TargetTooHigh.class);
        assertThat(us.judge(marked.withPlus(entry), TODAY).fitness()).isInstanceOf(Fitness.Fit.class);
        assertThat(us.judge(marked.withPlus(entry).wanting(contents(1_981, 2_296)), TODAY)
                        .fitness())
                .isInstanceOf(Fitness.TargetTooHigh.class);
        Judgement unmarked = us.judge(
                cylinder("B-26", steel, TestMark.of(2022, 8), reads(300))
                        .withPlus(entry)
                        .wanting(contents(1_980, 2_295)),
                TODAY);
        assertThat(unmarked.fitness()).isInstanceOf(Fitness.TargetTooHigh.class);
        assertThat(unmarked.warnings()).extracting(Finding::advice).containsExactly(Advice.PLUS_NOT_MARKED);
    }

    @Test
    void b27WithoutAReadableStampIsRefused() {
        Judgement judgement = us.judge(cylinder("B-27", Nameplate.UNREADABLE, null, reads(500)), TODAY);

        assertThat(judgement.fitness()).isInstanceOf(Fitness.Unfit.class);
        assertThat(judgement.refusals())
                .filteredOn(f -> f.rule().id().equals("us.legible"))
                .extracting(Finding::limit)
                .containsExactly(new Measure.OfWord("specification"), new Measure.OfWord("service-pressure"));
        assertThat(OverrideOutcome.decide(judgement, new OverrideRequest("A. Moss", "R. Fern", true, "known to us")))
                .isInstanceOf(OverrideOutcome.NotOverridden.class);
    }

    @Test
    void everyRuleSaysWhereItComesFromAndCanBeChanged() {
        assertThat(us.rules()).allSatisfy(rule -> {
            assertThat(rule.heading().source()).isNotBlank();
            assertThat(rule.heading().country()).isNotBlank();
        });
        RetestInterval shorter = (RetestInterval) us.rules().stream()
                .filter(rule -> rule.heading().id().equals("us.retest.3a"))
                .findFirst()
                .orElseThrow();
        BookChange change = us.with(new RetestInterval(shorter.heading(), shorter.cylinders(), 3));
        RuleBook changed = ((BookChange.Changed) change).book();

        assertThat(changed.judge(Cylinders.sound(), TODAY).fitness()).isInstanceOf(Fitness.Fit.class);
        assertThat(changed.judge(Cylinders.sound(), LocalDate.of(2027, 6, 1)).fitness())
                .isInstanceOf(Fitness.UseUpOnly.class);
        assertThat(us.judge(Cylinders.sound(), LocalDate.of(2027, 6, 1)).fitness())
                .isInstanceOf(Fitness.Fit.class);
        assertThat(changed.rules()).hasSameSizeAs(us.rules());
    }
}
