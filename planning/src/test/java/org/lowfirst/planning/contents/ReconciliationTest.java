package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.contents.BenchFact.ReadingTaken;
import org.lowfirst.planning.contents.BenchFact.Since;
import org.lowfirst.planning.contents.BenchFact.SupplyExchanged;
import org.lowfirst.planning.contents.SimulatedBench.Truth;

/** One thing goes wrong at a bench with two quiet weeks behind it; what stands at the end. */
class ReconciliationTest {

    private final SimulatedBench bench = new SimulatedBench(77);
    private final Truth a = bench.supply("A", 50, 90);
    private final Truth b = bench.supply("B", 50, 150);
    private final Truth c = bench.supply("C", 50, 198);
    private final Truth bottle = bench.bottle("M1", 5, 1.0);
    private final Truth mislabelled = bench.bottle("M2", 5, 1.7);

    @BeforeEach
    void twoQuietWeeks() {
        for (int day = 0; day < 14; day++) {
            bench.readBank();
            if (day % 5 == 2) {
                bench.fill(bottle, 40, 140);
            }
            bench.pass(1);
        }
    }

    private void days(int count) {
        for (int day = 0; day < count; day++) {
            bench.readBank();
            bench.pass(1);
        }
    }

    private static Verdict standing(BenchHistory history, Truth cylinder) {
        return Objects.requireNonNull(history.standing().get(cylinder.name()));
    }

    private static void quiet(BenchHistory history, Truth... cylinders) {
        for (Truth cylinder : cylinders) {
            assertThat(standing(history, cylinder).code().accuses())
                    .as(standing(history, cylinder).toString())
                    .isFalse();
        }
    }

    @Test
    void nothingWrongIsInsideGaugeUncertainty() {
        days(7);
        quiet(bench.reconcile(), a, b, c);
    }

    @Test
    void aLeakIsNamedOnTheSupplyThatLeaks() {
        b.leakPerDay = 0.01;
        days(8);
        BenchHistory history = bench.reconcile();
        Verdict verdict = standing(history, b);
        assertThat(verdict.code()).isEqualTo(VerdictCode.LIKELY_LEAK);
        assertThat(verdict.evidence().share()).isCloseTo(0.01, within(0.006));
        assertThat(verdict.chanceOfNoise()).isLessThan(Given.ASSUMED.verdicts().likelyChance());
        quiet(history, a, c);
    }

    @Test
    void aWrongValveIsNamedWithBothSupplies() {
        bench.facts.add(new ReadingTaken(bench.settled(bottle), Since.MAYBE_USED));
        bottle.amount_mol *= 0.3;
        bench.facts.add(new ReadingTaken(bench.settled(bottle), Since.MAYBE_USED));
        bench.stage(b, c, bottle, 140);
        bench.pass(0.5);
        days(3);
        BenchHistory history = bench.reconcile();
        for (Truth mixedUp : List.of(b, c)) {
            Verdict verdict = standing(history, mixedUp);
            assertThat(verdict.code()).isEqualTo(VerdictCode.LIKELY_WRONG_VALVE_OR_UNRECORDED_FILL);
            assertThat(verdict.cause()).isEqualTo(Cause.WRONG_VALVE);
            assertThat(verdict.other()).isEqualTo(mixedUp == b ? "C" : "B");
        }
        quiet(history, a);
    }

    @Test
    void anUnrecordedFillIsToldFromALeakOnceItStaysPut() {
        c.amount_mol -= 20;
        days(1);
        assertThat(standing(bench.reconcile(), c).code()).isEqualTo(VerdictCode.LIKELY_LEAK);
        assertThat(standing(bench.reconcile(), c).alsoPossible()).contains(Cause.UNRECORDED_FILL);
        days(6);
        Verdict verdict = standing(bench.reconcile(), c);
        assertThat(verdict.code()).isEqualTo(VerdictCode.LIKELY_WRONG_VALVE_OR_UNRECORDED_FILL);
        assertThat(verdict.cause()).isEqualTo(Cause.UNRECORDED_FILL);
        assertThat(verdict.evidence().missing_mol()).isCloseTo(20.0, within(4.0));
    }

    @Test
    void aWrongVolumeIsNamedOnTheBottleWithWhatItMustBe() {
        for (int i = 0; i < 4; i++) {
            days(1);
            bench.fill(mislabelled, 30, 140);
        }
        BenchHistory history = bench.reconcile();
        Verdict verdict = standing(history, mislabelled);
        assertThat(verdict.code()).isEqualTo(VerdictCode.LIKELY_WRONG_VOLUME);
        assertThat(verdict.advice()).isEqualTo(Advice.CHECK_THE_STAMPED_VOLUME);
        assertThat(verdict.evidence().share()).isCloseTo(0.7, within(0.25));
        for (Truth supply : List.of(a, b, c)) {
            assertThat(standing(history, supply).code()).isNotEqualTo(VerdictCode.LIKELY_LEAK);
        }
    }

    @Test
    void moreGasThanBeforeWithNothingPutInIsAnUnrecordedExchange() {
        a.amount_mol += 150;
        days(2);
        Verdict verdict = standing(bench.reconcile(), a);
        assertThat(verdict.code()).isEqualTo(VerdictCode.LIKELY_WRONG_VALVE_OR_UNRECORDED_FILL);
        assertThat(verdict.cause()).isEqualTo(Cause.UNRECORDED_EXCHANGE);
    }

    @Test
    void aRecordedExchangeStartsAfresh() {
        a.amount_mol += 150;
        bench.facts.add(new SupplyExchanged("A", bench.settled(a)));
        days(3);
        BenchHistory history = bench.reconcile();
        quiet(history, a, b, c);
        assertThat(Objects.requireNonNull(history.contents().get("A")).mean_mol())
                .isCloseTo(a.amount_mol, within(12.0));
    }

    @Test
    void oneMisreadNumberIsForgottenByTheNextReadings() {
        days(2);
        GaugeReading right = bench.settled(b);
        GaugeReading misread = new GaugeReading(
                right.at(),
                right.cylinder(),
                right.gauge(),
                GaugePressure.ofBar(right.shown().toBar() - 20),
                right.temperature());
        bench.facts.add(new ReadingTaken(misread, Since.KEPT_SHUT));
        assertThat(standing(bench.reconcile(), b).code()).isEqualTo(VerdictCode.LIKELY_LEAK);
        bench.pass(1);
        days(1);
        Verdict verdict = standing(bench.reconcile(), b);
        assertThat(verdict.code()).isEqualTo(VerdictCode.WATCH);
        assertThat(verdict.cause()).isEqualTo(Cause.MISREAD);
        assertThat(verdict.advice()).isEqualTo(Advice.READ_AGAIN_SETTLED);
    }

    @Test
    void aSupplyThatLeftIsNoLongerInTheContents() {
        a.amount_mol += 150;
        Truth d = bench.supply("D", 50, 190);
        bench.facts.add(new SupplyExchanged("A", bench.settled(d)));
        BenchHistory history = bench.reconcile();
        assertThat(history.contents()).containsKeys("B", "C", "D").doesNotContainKey("A");
        assertThat(history.standing()).doesNotContainKey("A");
    }

    /** The chain of cases in the reconciler is complete. */
    @Test
    void everyKindOfFactIsKnown() {
        assertThat(BenchFact.class.getPermittedSubclasses())
                .containsExactlyInAnyOrder(ReadingTaken.class, BenchFact.StageMade.class, SupplyExchanged.class);
    }

    @Test
    void theSameFactsGiveTheSameHistory() {
        days(3);
        assertThat(bench.reconcile()).isEqualTo(bench.reconcile());
    }
}
