package org.lowfirst.planning.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.planning.ShownUnits;

/** Progress, an early end, and habits against each other. */
final class StudyingTest {

    private static StudyRequest request(long runs, List<Alternative> ways) {
        return new StudyRequest(Studies.REAL, Studies.mixed(150), Studies.PRICES, ways, Extent.of(5, runs, 1));
    }

    private static final List<Alternative> TWO_BANKS = List.of(
            new Alternative("two", 2, Studies.supply(50, 200), ExchangeHabit.oneAtATime()),
            new Alternative("four", 4, Studies.supply(50, 200), ExchangeHabit.oneAtATime()));

    @Test
    void progressRisesToTheEnd() {
        AtomicLong last = new AtomicLong(-1);
        Studying.study(request(100, TWO_BANKS), 2, (done, runs) -> {
            assertThat(done).isGreaterThanOrEqualTo(last.get()).isLessThan(runs);
            assertThat(runs).isEqualTo(100);
            last.set(done);
            return true;
        });
        assertThat(last.get()).isGreaterThan(90);
    }

    @Test
    void anEndedStudyAnswersWithTheRunsItHasDone() {
        StudyResult result = Studies.done(Studying.study(request(100_000, TWO_BANKS), 2, (done, runs) -> done < 40));
        assertThat(result.runs()).isBetween(2L, 60L);
        assertThat(result.runsAsked()).isEqualTo(100_000);
        assertThat(Objects.requireNonNull(result.alternatives().get(0).costPerFill())
                        .mean())
                .isGreaterThan(0);
    }

    @Test
    void aStudyEndedAtOnceHasNoAnswer() {
        StudyOutcome outcome = Studying.study(request(100, TWO_BANKS), 2, (done, runs) -> false);
        assertThat(outcome).isInstanceOf(StudyOutcome.Refused.class);
        assertThat(((StudyOutcome.Refused) outcome).why().inWords(ShownUnits.METRIC))
                .isEqualTo("The study must not be ended before its second run is done. Please correct it.");
    }

    @Test
    void interruptingEndsTheStudyToo() throws InterruptedException {
        Thread calling = new Thread(() -> Studying.study(request(10_000_000, TWO_BANKS), 1, StudyWatch.NONE));
        calling.start();
        Thread.sleep(100);
        calling.interrupt();
        calling.join(20_000);
        assertThat(calling.isAlive()).isFalse();
    }

    @Test
    void pairsHalveTheDeliveriesAndSendMoreBack() {
        SupplyKind supply = Studies.supply(50, 200);
        List<AlternativeResult> results = Studies.done(request(
                        100,
                        List.of(
                                new Alternative("one", 4, supply, ExchangeHabit.oneAtATime()),
                                new Alternative("pairs", 4, supply, ExchangeHabit.inPairs()),
                                new Alternative("all", 4, supply, new ExchangeHabit(When.A_FILL_WOULD_FAIL, 4, null)))))
                .alternatives();
        for (int i = 1; i < 3; i++) {
            assertThat(results.get(i).usage().deliveriesPerYear())
                    .isLessThan(results.get(i - 1).usage().deliveriesPerYear());
            assertThat(share(results.get(i))).isGreaterThan(share(results.get(i - 1)));
        }
    }

    private static double share(AlternativeResult result) {
        return Objects.requireNonNull(result.sentBack()).share().mean();
    }

    @Test
    void sendingAheadMissesFewerFillsWhenDeliveryTakesDays() {
        SupplyKind supply = Studies.supply(50, 200);
        StudyRequest base = request(
                200,
                List.of(
                        new Alternative("late", 3, supply, ExchangeHabit.oneAtATime()),
                        new Alternative("ahead", 3, supply, ExchangeHabit.whenTheTopCannotFinish(1)),
                        new Alternative("stored", 3, 1, supply, ExchangeHabit.oneAtATime(), null)));
        List<AlternativeResult> results = Studies.done(new StudyRequest(
                        base.site(), base.demand(), new Prices(35, 10, 20, 90, 10), base.alternatives(), base.extent()))
                .alternatives();
        assertThat(missed(results.get(1))).isLessThan(missed(results.get(0)));
        assertThat(missed(results.get(2))).isLessThan(missed(results.get(1)));
        assertThat(results.get(2).storage().places()).isEqualTo(4);
    }

    private static double missed(AlternativeResult result) {
        return result.usage().missedPerYear().mean();
    }

    @Test
    void aBottleNoBankCanFinishIsCountedApartAndCostsNoSupplies() {
        BottleUse beyond = new BottleUse(
                "beyond",
                Studies.bottle("", 5, 0, 0, 1).waterVolume(),
                GaugePressure.ofBar(300),
                GaugePressure.ofBar(250),
                GaugePressure.ofBar(20),
                GaugePressure.ofBar(20),
                1);
        StudyResult result = Studies.done(new StudyRequest(
                Studies.IDEAL, Demand.even(100, List.of(beyond)), Studies.PRICES, TWO_BANKS, Extent.of(5, 10, 1)));
        assertThat(result.cheapest()).isNull();
        for (AlternativeResult each : result.alternatives()) {
            assertThat(each.costPerFill()).isNull();
            assertThat(each.usage().suppliesPerYear()).isZero();
            assertThat(each.usage().outOfReachPerYear())
                    .isEqualTo(each.usage().missedPerYear().mean())
                    .isBetween(80.0, 120.0);
        }
    }
}
