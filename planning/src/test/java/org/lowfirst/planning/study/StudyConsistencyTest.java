package org.lowfirst.planning.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Volume;

/** Balances, sums and independence of how the work is split, over ways of running a bench that use everything there is. */
final class StudyConsistencyTest {

    private static final Booster BOOSTER = new Booster(GaugePressure.ofBar(30), 4_000, 200, 0.5);

    private static StudyRequest everything(long seed) {
        SupplyKind uncertain = new SupplyKind(
                "50 L", Volume.ofLitres(50), GaugePressure.ofBar(185), GaugePressure.ofBar(205), 60, 0.25);
        Site site = new Site(
                Studies.REAL.gas(),
                Studies.REAL.temperature(),
                Studies.REAL.reference(),
                Studies.REAL.ambient(),
                Volume.ofLitres(0.2));
        List<Alternative> ways = List.of(
                new Alternative("one", 1, uncertain, ExchangeHabit.oneAtATime()),
                new Alternative("three", 3, uncertain, ExchangeHabit.oneAtATime()),
                new Alternative("pairs", 4, uncertain, ExchangeHabit.inPairs()),
                new Alternative("all", 4, uncertain, new ExchangeHabit(When.A_FILL_WOULD_FAIL, 4, null)),
                new Alternative("stored", 3, 2, uncertain, ExchangeHabit.oneAtATime(), null),
                new Alternative("pairs and one stored", 3, 1, uncertain, ExchangeHabit.whenTheTopCannotFinish(2), null),
                new Alternative(
                        "residual", 4, 1, uncertain, ExchangeHabit.atResidual(GaugePressure.ofBar(60), 1), null),
                new Alternative("booster", 2, 0, uncertain, ExchangeHabit.oneAtATime(), BOOSTER));
        return new StudyRequest(site, Studies.mixed(300), new Prices(35, 5, 20, 90, 10), ways, Extent.of(4, 50, seed));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void noRunLosesTrackOfItsGas(long seed) {
        assertThat(Studies.done(everything(seed)).worstImbalance()).isLessThan(1e-9);
    }

    @Test
    void theAnswerDoesNotDependOnTheNumberOfThreads() {
        StudyRequest request = everything(4);
        StudyOutcome alone = Studying.study(request, 1, StudyWatch.NONE);
        assertThat(Studying.study(request, 2, StudyWatch.NONE)).isEqualTo(alone);
        assertThat(Studying.study(request, 5, StudyWatch.NONE)).isEqualTo(alone);
    }

    @Test
    void blocksComputedAnywhereAndJoinedInOrderGiveTheSameDigits() {
        StudyRequest request = everything(5);
        List<StudyTotals> parts = new ArrayList<>();
        PreparedStudy prepared = PreparedStudy.of(request);
        for (long block = prepared.blocks() - 1; block >= 0; block--) {
            parts.add(0, PreparedStudy.of(request).block(block));
        }
        StudyTotals all = prepared.noRuns();
        parts.forEach(all::add);
        assertThat(prepared.result(all)).isEqualTo(Studying.study(request, 2, StudyWatch.NONE));
    }

    @Test
    void otherSeedsGiveOtherDigits() {
        assertThat(Studies.done(everything(1))).isNotEqualTo(Studies.done(everything(2)));
    }

    @Test
    void theCostIsTheSumOfItsParts() {
        for (AlternativeResult result : Studies.done(everything(6)).alternatives()) {
            double cost = Objects.requireNonNull(result.costPerFill()).mean();
            assertThat(Objects.requireNonNull(result.parts()).sum()).isEqualTo(cost, within(1e-9 * cost));
        }
    }

    @Test
    void everyBottleThatComesIsFilledMissedOrNotInNeed() {
        StudyRequest request = everything(7);
        PreparedStudy prepared = PreparedStudy.of(request);
        for (long run = 0; run < 5; run++) {
            List<RunLedger> ledgers = prepared.run(run);
            double came = came(ledgers.get(0));
            for (RunLedger ledger : ledgers) {
                assertThat(came(ledger)).isEqualTo(came);
                assertThat(ledger.of(Measure.FILLS)).isGreaterThan(0);
            }
        }
    }

    private static double came(RunLedger ledger) {
        return ledger.of(Measure.FILLS) + ledger.of(Measure.MISSED_FILLS) + ledger.of(Measure.NOT_NEEDED);
    }

    @Test
    void bankSizesMetByTheSameBottlesAreComparedBetterThanUnpairedOnesWouldBe() {
        StudyRequest base = everything(8);
        SupplyKind supply = base.alternatives().get(0).supply();
        List<Alternative> banks = List.of(
                new Alternative("three", 3, supply, ExchangeHabit.oneAtATime()),
                new Alternative("four", 4, supply, ExchangeHabit.oneAtATime()),
                new Alternative("five", 5, supply, ExchangeHabit.oneAtATime()));
        StudyResult study =
                Studies.done(new StudyRequest(base.site(), base.demand(), Studies.PRICES, banks, base.extent()));
        double cheapest = study.alternatives().stream()
                .filter(result -> result.alternative().name().equals(study.cheapest()))
                .mapToDouble(result -> width(Objects.requireNonNull(result.costPerFill())))
                .sum();
        for (AlternativeResult result : study.alternatives()) {
            Estimate above = result.aboveCheapest();
            if (above != null) {
                double own = width(Objects.requireNonNull(result.costPerFill()));
                assertThat(width(above)).isLessThan(0.5 * Math.hypot(own, cheapest));
                assertThat(above.mean()).isGreaterThan(0);
            }
        }
    }

    private static double width(Estimate estimate) {
        return estimate.high() - estimate.low();
    }
}
