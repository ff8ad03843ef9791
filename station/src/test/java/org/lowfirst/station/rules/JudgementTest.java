package org.lowfirst.station.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lowfirst.station.rules.Cylinders.TODAY;
import static org.lowfirst.station.rules.Cylinders.cylinder;
import static org.lowfirst.station.rules.Cylinders.finding;
import static org.lowfirst.station.rules.Cylinders.plate;
import static org.lowfirst.station.rules.Cylinders.reads;
import static org.lowfirst.station.rules.Cylinders.sound;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

class JudgementTest {

    private final RuleBook us = BuiltInBooks.us();

    private Judgement judge(CylinderFacts facts) {
        return us.judge(facts, TODAY);
    }

    private static CylinderFacts with(Service service) {
        CylinderFacts f = sound();
        return CylinderFacts.of(f.name(), f.nameplate(), f.lastTest(), f.use(), service)
                .answering(f.answers());
    }

    @Test
    void aSoundCylinderIsFitWithoutWarnings() {
        assertThat(judge(sound()).fitness()).isEqualTo(new Fitness.Fit());
        assertThat(judge(sound()).overall()).isEqualTo(Verdict.ALLOW);
    }

    @Test
    void findingsComeWorstFirst() {
        CylinderFacts facts = cylinder(
                "B-05",
                plate("3HT", WallMaterial.STEEL, 1_850, YearMonth.of(2010, 3)),
                TestMark.of(2024, 3),
                reads(0, 4_371));

        assertThat(judge(facts).findings())
                .isSortedAccordingTo((a, b) -> b.verdict().compareTo(a.verdict()));
        assertThat(judge(facts).overall()).isEqualTo(Verdict.REFUSE);
    }

    @ParameterizedTest(name = "{0} fills: {1}")
    @CsvSource({"0, ALLOW", "4329, ALLOW", "4330, ALLOW_WITH_WARNING", "4379, ALLOW_WITH_WARNING", "4380, REFUSE"})
    void lastFillOfALifeIsAllowedAndTheOneAfterIsNot(int fills, Verdict verdict) {
        CylinderFacts facts = cylinder(
                "B-06",
                plate("3HT", WallMaterial.STEEL, 1_850, YearMonth.of(2010, 3)),
                TestMark.of(2024, 3),
                reads(400, fills));

        assertThat(finding(judge(facts), "us.cycles.3ht").verdict()).isEqualTo(verdict);
    }

    @Test
    void unknownFillsOrMonthMadeHoldALimitedLifeCylinder() {
        CylinderFacts facts =
                cylinder("B-06", plate("3HT", WallMaterial.STEEL, 1_850, null), TestMark.of(2024, 3), reads(400));

        assertThat(judge(facts).refusals())
                .extracting(Finding::advice)
                .containsExactly(Advice.ENTER_MONTH_MADE, Advice.ENTER_FILLS_SO_FAR);
        assertThat(judge(facts).fitness()).isInstanceOf(Fitness.Unfit.class);
    }

    @ParameterizedTest(name = "on {0}: {1}")
    @CsvSource({
        "2029-03-01, ALLOW",
        "2029-03-02, ALLOW_WITH_WARNING",
        "2029-05-31, ALLOW_WITH_WARNING",
        "2029-06-01, REFUSE"
    })
    void aTestIsGoodToTheLastDayOfItsDueMonth(LocalDate day, Verdict verdict) {
        assertThat(finding(us.judge(sound(), day), "us.past-due").verdict()).isEqualTo(verdict);
    }

    @Test
    void theBookMaySayThatADueMonthEndsBeforeItBegins() {
        RuleHeading heading = us.rules().get(0).heading();
        RuleBook strict = ((BookChange.Changed) us.with(new DueMonth(heading, DuePoint.START_OF_DUE_MONTH))).book();

        assertThat(strict.judge(sound(), LocalDate.of(2029, 4, 30)).refusals()).isEmpty();
        assertThat(strict.judge(sound(), LocalDate.of(2029, 5, 1)).refusals()).isNotEmpty();
    }

    @Test
    void aTestInTheFutureOrBeforeManufactureIsATypingSlip() {
        Nameplate made2020 = plate("3AA", WallMaterial.STEEL, 1_800, YearMonth.of(2020, 3));

        assertThat(judge(cylinder("B", made2020, TestMark.of(2026, 7), reads(400)))
                        .refusals())
                .extracting(Finding::advice)
                .containsExactly(Advice.CHECK_TEST_DATE);
        assertThat(judge(cylinder("B", made2020, TestMark.of(2019, 7), reads(400)))
                        .refusals())
                .extracting(Finding::advice)
                .containsExactly(Advice.CHECK_TEST_DATE);
    }

    @Test
    void aNewCylinderCountsFromTheMonthItWasMade() {
        CylinderFacts fresh =
                cylinder("B", plate("3AL", WallMaterial.ALUMINIUM, 2_015, YearMonth.of(2023, 3)), null, reads(400));

        assertThat(judge(fresh).fitness()).isInstanceOf(Fitness.Fit.class);
        assertThat(us.judge(fresh, LocalDate.of(2028, 4, 1)).fitness()).isInstanceOf(Fitness.UseUpOnly.class);
    }

    @Test
    void anEmptyPastDueCylinderHasNothingToUseUp() {
        CylinderFacts facts = cylinder(
                "B",
                plate("3AL", WallMaterial.ALUMINIUM, 2_015, YearMonth.of(2010, 3)),
                TestMark.of(2015, 3),
                reads(0));

        assertThat(finding(judge(facts), "us.past-due").advice()).isEqualTo(Advice.RETEST_BEFORE_FILLING);
        assertThat(judge(facts).fitness()).isInstanceOf(Fitness.Unfit.class);
    }

    @Test
    void aluminiumHoldsOxygenAtNoMoreThan3000PsiWhateverIsMarked() {
        Nameplate marked3300 = plate("3AL", WallMaterial.ALUMINIUM, 3_300, YearMonth.of(2020, 3));
        CylinderFacts facts = cylinder("B", marked3300, TestMark.of(2025, 3), reads(400));

        Judgement judgement = judge(facts.wanting(Cylinders.contents(3_200, 3_780)));

        assertThat(judgement.refusals()).extracting(f -> f.rule().id()).containsExactly("us.aluminium-oxygen");
        assertThat(judgement
                        .findLowestLimit(Cylinders.AT_70_F)
                        .orElseThrow()
                        .most()
                        .pressure())
                .isEqualTo(GaugePressure.ofPsi(3_000));
        assertThat(judge(facts.wanting(Cylinders.contents(3_000, 3_536))).refusals())
                .isEmpty();
    }

    @Test
    void contentsNotStatedAtTheTemperatureOfARuleAreNotTakenOnTrust() {
        CylinderFacts facts = sound().wanting(List.of(new PressureAt(GaugePressure.ofPsi(1_500), Cylinders.AT_131_F)));

        assertThat(judge(facts).refusals())
                .extracting(Finding::advice)
                .containsExactly(Advice.STATE_CONTENTS_AT_TEMPERATURE);
    }

    @Test
    void aPlusRatingIsNotForAluminiumLightTypesOrComposite() {
        PlusEntry entry = new PlusEntry("report", "R. Fern");
        TestMark plus = new TestMark(YearMonth.of(2025, 3), true, false, "");
        CylinderFacts facts = cylinder(
                        "B", plate("3AL", WallMaterial.ALUMINIUM, 2_015, YearMonth.of(2020, 3)), plus, reads(400))
                .withPlus(entry)
                .wanting(Cylinders.contents(2_200, 2_560));

        assertThat(judge(facts).refusals()).extracting(f -> f.rule().id()).contains("us.service-pressure");
        assertThat(judge(facts).warnings())
                .extracting(Finding::advice)
                .containsExactly(Advice.PLUS_NOT_FOR_THIS_SPECIFICATION);
    }

    @Test
    void aStarGivesTenYearsOnlyWithAHammerTestToday() {
        Nameplate steel = plate("3AA", WallMaterial.STEEL, 2_015, YearMonth.of(1998, 3));
        TestMark star = new TestMark(YearMonth.of(2019, 3), false, true, "");
        GaugePressure half = GaugePressure.ofPsi(900);

        Judgement untested = judge(cylinder("B", steel, star, Use.reading(half)));
        Judgement yesterday = judge(cylinder("B", steel, star, new Use(null, half, false, null, TODAY.minusDays(1))));
        Judgement today = judge(cylinder("B", steel, star, new Use(null, half, false, null, TODAY)));

        assertThat(untested.refusals()).extracting(Finding::advice).containsExactly(Advice.HAMMER_TEST_FIRST);
        assertThat(yesterday.refusals()).extracting(Finding::advice).containsExactly(Advice.HAMMER_TEST_FIRST);
        assertThat(today.fitness()).isInstanceOf(Fitness.Fit.class);
        assertThat(finding(today, "us.past-due").basis()).extracting("id").isEqualTo("us.star");
    }

    @Test
    void aStarWhoseConditionsAreNotKnownDoesNotCount() {
        TestMark star = new TestMark(YearMonth.of(2019, 3), false, true, "");
        Nameplate noVolume =
                new Nameplate("3AA", WallMaterial.STEEL, GaugePressure.ofPsi(2_015), null, null, YearMonth.of(1998, 3));
        Nameplate tooLarge = new Nameplate(
                "3AA",
                WallMaterial.STEEL,
                GaugePressure.ofPsi(2_015),
                null,
                Volume.ofLitres(57),
                YearMonth.of(1998, 3));
        Nameplate aluminium = plate("3AL", WallMaterial.ALUMINIUM, 2_015, YearMonth.of(1998, 3));

        for (Nameplate plate : List.of(noVolume, tooLarge, aluminium)) {
            Judgement judgement = judge(cylinder("B", plate, star, reads(900)));
            assertThat(judgement.fitness()).isInstanceOf(Fitness.UseUpOnly.class);
            assertThat(judgement.warnings()).extracting(Finding::advice).contains(Advice.STAR_DOES_NOT_COUNT);
        }
    }

    @Test
    void aPermitCylinderNeedsItsTermsEntered() {
        Nameplate composite = plate("SP", WallMaterial.COMPOSITE, 1_850, YearMonth.of(2014, 3));
        CylinderFacts facts = cylinder("B", composite, TestMark.of(2024, 3), reads(400));

        assertThat(judge(facts).refusals()).extracting(Finding::advice).containsExactly(Advice.ENTER_PERMIT_TERMS);
        assertThat(judge(facts.withPermit(new PermitTerms(5, 15, "invented permit, rev. 3")))
                        .fitness())
                .isInstanceOf(Fitness.Fit.class);
        assertThat(us.judge(
                                facts.withPermit(new PermitTerms(5, 15, "invented permit, rev. 3")),
                                LocalDate.of(2029, 4, 1))
                        .fitness())
                .isInstanceOf(Fitness.LifeOver.class);
    }

    @Test
    void aSpecificationNoRuleSpeaksOfIsNotFilled() {
        CylinderFacts facts =
                cylinder("B", plate("39", WallMaterial.STEEL, 1_850, YearMonth.of(2025, 3)), null, reads(400));

        assertThat(judge(facts).refusals()).extracting(Finding::advice).contains(Advice.ADD_RULE_FOR_SPECIFICATION);
        assertThat(judge(facts).refusals()).extracting(Finding::override).containsOnly(OverridePolicy.NEVER);
    }

    @Test
    void noMarkedPressureOnSpecification3IsTakenAs1800() {
        Nameplate old = new Nameplate("3", WallMaterial.STEEL, null, null, Volume.ofLitres(4), YearMonth.of(1947, 3));
        Judgement judgement = judge(cylinder("B", old, TestMark.of(2025, 3), reads(400)));

        assertThat(judgement
                        .findLowestLimit(Cylinders.AT_70_F)
                        .orElseThrow()
                        .most()
                        .pressure())
                .isEqualTo(GaugePressure.ofPsi(1_800));
        assertThat(judgement.refusals()).isEmpty();
    }

    @Test
    void foundOpenIsAsBadAsEmptyUntilInspected() {
        CylinderFacts f = sound();
        Use open = new Use(null, GaugePressure.ofPsi(400), true, null, null);
        Use inspected = new Use(null, GaugePressure.ofPsi(400), true, TODAY, null);

        assertThat(judge(cylinder("B", f.nameplate(), f.lastTest(), open)).refusals())
                .extracting(Finding::advice)
                .containsExactly(Advice.INSPECT_AND_CLEAN_FIRST);
        assertThat(judge(cylinder("B", f.nameplate(), f.lastTest(), inspected)).warnings())
                .extracting(Finding::advice)
                .containsExactly(Advice.INSPECTED_SINCE_EMPTY);
    }

    @ParameterizedTest(name = "{0} psi")
    @CsvSource({"24.9, false", "25, true"})
    void aReadingAtTheFloorPasses(double psi, boolean fit) {
        CylinderFacts f = sound();
        assertThat(judge(cylinder("B", f.nameplate(), f.lastTest(), reads(psi)))
                        .fitness()
                        .mayBeFilled())
                .isEqualTo(fit);
    }

    @Test
    void anotherGasOrAnotherOutletIsRefusedAndNamed() {
        Judgement gas = judge(with(new Service("argon", "CGA 540", Answer.NO, Answer.YES, Answer.YES)));
        Judgement outlet = judge(with(new Service("Oxygen", "CGA 346", Answer.NO, Answer.YES, Answer.YES)));
        Judgement unknown = judge(with(new Service("oxygen", null, Answer.NO, Answer.YES, Answer.YES)));

        assertThat(gas.refusals()).extracting(Finding::measured).containsExactly(new Measure.OfWord("argon"));
        assertThat(outlet.refusals()).extracting(Finding::advice).containsExactly(Advice.DO_NOT_ADAPT_CONNECTION);
        assertThat(unknown.refusals()).isEmpty();
        assertThat(unknown.warnings()).extracting(Finding::advice).containsExactly(Advice.ENTER_CONNECTION);
        assertThat(judge(with(new Service("OXYGEN ", "cga-540", Answer.NO, Answer.YES, Answer.YES)))
                        .fitness())
                .isInstanceOf(Fitness.Fit.class);
    }

    @Test
    void otherServiceCleanlinessAndConsentEachStopTheFill() {
        assertThat(judge(with(new Service("oxygen", "CGA 540", Answer.YES, Answer.YES, Answer.YES)))
                        .refusals())
                .extracting(Finding::advice)
                .containsExactly(Advice.CLEAN_FOR_OXYGEN);
        assertThat(judge(with(new Service("oxygen", "CGA 540", Answer.NO, Answer.NOT_SURE, Answer.YES)))
                        .refusals())
                .extracting(Finding::advice)
                .containsExactly(Advice.SHOW_CLEANING_RECORD);
        assertThat(judge(with(new Service("oxygen", "CGA 540", Answer.NO, Answer.YES, Answer.NOT_SURE)))
                        .refusals())
                .extracting(Finding::advice)
                .containsExactly(Advice.ASK_OWNER);
    }

    @Test
    void everyConditionQuestionMustBeAnswered() {
        Map<String, Answer> answers = new HashMap<>(sound().answers());
        answers.remove("leaking");
        answers.put("bulged", Answer.YES);
        answers.put("corroded", Answer.NOT_SURE);

        List<Finding> refusals = judge(sound().answering(answers)).refusals();

        assertThat(refusals)
                .extracting(f -> f.measured() + " " + f.advice() + " " + f.override())
                .containsExactlyInAnyOrder(
                        new Measure.OfWord("leaking") + " ANSWER_QUESTION NEVER",
                        new Measure.OfWord("bulged") + " SEND_TO_INSPECTION NEVER",
                        new Measure.OfWord("corroded") + " LET_SECOND_PERSON_LOOK SECOND_PERSON");
    }

    @Test
    void alloy6351WithoutEddyCurrentMarkIsAsked() {
        Nameplate alloy = plate("3AL", WallMaterial.ALUMINIUM_6351, 2_015, YearMonth.of(1986, 3));
        TestMark ve = new TestMark(YearMonth.of(2025, 3), false, false, "VE");

        assertThat(judge(cylinder("B", alloy, TestMark.of(2025, 3), reads(400))).warnings())
                .extracting(Finding::advice)
                .containsExactly(Advice.ASK_FOR_EDDY_CURRENT_TEST);
        assertThat(judge(cylinder("B", alloy, ve, reads(400))).warnings()).isEmpty();
    }

    @Test
    void aCompositeInEuropeIsTestedEveryFiveYearsAndAMetalOneEveryTen() {
        RuleBook eu = BuiltInBooks.eu();
        for (WallMaterial wall : List.of(WallMaterial.COMPOSITE, WallMaterial.STEEL, WallMaterial.ALUMINIUM)) {
            Nameplate plate = new Nameplate(
                    null,
                    wall,
                    GaugePressure.ofBar(200),
                    GaugePressure.ofBar(300),
                    Volume.ofLitres(2),
                    YearMonth.of(2015, 6));
            CylinderFacts facts = CylinderFacts.of(
                    "B", plate, TestMark.of(2016, 6), Use.reading(GaugePressure.ofBar(30)), Service.oxygen("G 3/4"));
            LocalDate last = LocalDate.of(wall == WallMaterial.COMPOSITE ? 2021 : 2026, 6, 30);
            CylinderFacts asked = facts.answering(Cylinders.allNo(eu));

            assertThat(eu.judge(asked, last).fitness().mayBeFilled()).isTrue();
            assertThat(eu.judge(asked, last.plusDays(1)).fitness()).isInstanceOf(Fitness.UseUpOnly.class);
        }
    }
}
