package org.lowfirst.station.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/** What holds for every cylinder and every day, on 4,000 random ones. */
class RandomCylindersTest {

    private static final List<String> CODES = List.of("3A", "3AA", "3AL", "3HT", "3E", "3", "SP", "3ALM", "39");
    private static final int MANY = 4_000;

    private final Random random = new Random(49_180_209);
    private final RuleBook us = BuiltInBooks.us();

    private <T> @Nullable T maybe(T value) {
        return random.nextInt(6) == 0 ? null : value;
    }

    private <E extends Enum<E>> E any(Class<E> type) {
        E[] values = type.getEnumConstants();
        return values[random.nextInt(values.length)];
    }

    private CylinderFacts cylinder() {
        YearMonth made = YearMonth.of(1990 + random.nextInt(36), 1 + random.nextInt(12));
        Nameplate plate = new Nameplate(
                maybe(CODES.get(random.nextInt(CODES.size()))),
                any(WallMaterial.class),
                maybe(GaugePressure.ofPsi(1_800 + random.nextInt(1_600))),
                null,
                maybe(Volume.ofLitres(1 + random.nextInt(80))),
                maybe(made));
        TestMark test =
                new TestMark(made.plusMonths(random.nextInt(200)), random.nextBoolean(), random.nextInt(4) == 0, "");
        Use use = new Use(
                maybe(random.nextInt(4_500)),
                maybe(GaugePressure.ofPsi(random.nextInt(2_000))),
                random.nextInt(20) == 0,
                null,
                maybe(today()));
        Map<String, Answer> answers = new HashMap<>();
        us.questions(today()).forEach(question -> answers.put(question, Answer.NO));
        if (random.nextBoolean()) {
            answers.put("leaking", any(Answer.class));
        }
        Service service = random.nextBoolean()
                ? Service.oxygen("CGA 540")
                : new Service(maybe("oxygen"), maybe("CGA 540"), Answer.NO, any(Answer.class), any(Answer.class));
        double wanted = 1_000 + random.nextInt(2_500);
        CylinderFacts facts = CylinderFacts.of("B", plate, maybe(test), use, service)
                .answering(answers)
                .wanting(Cylinders.contents(wanted, wanted * 1.16));
        return random.nextInt(5) == 0 ? facts.withPlus(new PlusEntry("report", "R. Fern")) : facts;
    }

    private static LocalDate today() {
        return Cylinders.TODAY;
    }

    @Test
    void theOverallVerdictIsTheWorstAndOnlyThenMayACylinderBeFilled() {
        int fit = 0;
        for (int i = 0; i < MANY; i++) {
            Judgement judgement = us.judge(cylinder(), today());
            boolean refused = judgement.findings().stream().anyMatch(Finding::refuses);
            assertThat(judgement.overall() == Verdict.REFUSE).isEqualTo(refused);
            assertThat(judgement.fitness().mayBeFilled()).isEqualTo(!refused);
            fit += refused ? 0 : 1;
        }
        assertThat(fit).isBetween(MANY / 200, MANY / 2);
    }

    @Test
    void nothingThatMayBeFilledExceedsAMarkedPressureWithoutACountingPlus() {
        for (int i = 0; i < MANY; i++) {
            CylinderFacts facts = cylinder();
            Judgement judgement = us.judge(facts, today());
            GaugePressure marked = facts.nameplate().servicePressure();
            if (judgement.fitness().mayBeFilled() && marked != null) {
                double wanted = facts.wanted().get(0).pressure().toPsi();
                boolean plus = facts.plusEntry() != null
                        && facts.lastTest() != null
                        && facts.lastTest().plus();
                assertThat(wanted).isLessThanOrEqualTo(marked.toPsi() * (plus ? 1.1 : 1.0) + 0.02);
            }
        }
    }

    @Test
    void timeNeverMakesACylinderFitAgain() {
        for (int i = 0; i < MANY / 4; i++) {
            CylinderFacts facts = cylinder();
            boolean hammered = facts.use().hammerTested() != null;
            if (!hammered && us.judge(facts, today()).fitness() instanceof Fitness.LifeOver) {
                assertThat(us.judge(facts, today().plusYears(3)).fitness()).isInstanceOf(Fitness.LifeOver.class);
            }
            for (CylinderDate date : CylinderDate.list(facts, us, today())) {
                assertThat(us.judge(facts, date.lastDay().plusDays(1)).fitness().mayBeFilled())
                        .as("%s after %s", facts, date)
                        .isFalse();
            }
        }
    }

    @Test
    void limitsOfLifeRatingAndTestsAreNeverSetAside() {
        for (int i = 0; i < MANY; i++) {
            for (Finding refusal : us.judge(cylinder(), today()).refusals()) {
                if (refusal.advice().consequence() != Consequence.HOLD) {
                    assertThat(refusal.override()).isEqualTo(OverridePolicy.NEVER);
                }
            }
        }
    }

    @Test
    void judgingIsRepeatable() {
        for (int i = 0; i < MANY / 10; i++) {
            CylinderFacts facts = cylinder();
            assertThat(us.judge(facts, today())).isEqualTo(us.judge(facts, today()));
        }
    }
}
