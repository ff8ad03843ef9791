package org.lowfirst.planning.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * One connected supply that one bottle uses up, and full ones in store: every cylinder is either full or away for the lead time. Bottles that
 * come while all are away are missed. That is the loss system of A. K. Erlang (1917), whose lost share depends on the mean time
 * away only, not on its distribution (textbook result, from memory).
 *
 * <p>Choosing how many to store is then the newsvendor's choice between rent and missed fills, in closed form.
 */
final class ErlangLossReferenceTest {

    private static final double FILLS_A_YEAR = 100;
    private static final double LEAD_D = 7.3;
    private static final double MISSED_PRICE = 50;
    private static final double RENT_A_DAY = 1.0;

    @Test
    void theFormulaGivesTheTabulatedShares() {
        // c = 1: a / (1 + a); c = 3, a = 2: 4 / 19; c = 5, a = 3: 0.1101 (tables of the Erlang B formula, from memory)
        assertThat(lost(1, 2.0)).isEqualTo(2.0 / 3.0, within(1e-15));
        assertThat(lost(3, 2.0)).isEqualTo(4.0 / 19.0, within(1e-15));
        assertThat(lost(5, 3.0)).isEqualTo(0.1101, within(5e-5));
    }

    @Test
    void theShareOfMissedFillsIsErlangs() {
        for (AlternativeResult result : study(400, 3).alternatives()) {
            double expected = FILLS_A_YEAR * lost(result.alternative().places(), FILLS_A_YEAR / 365.0 * LEAD_D);
            Estimate missed = result.usage().missedPerYear();
            // twice the half-width of a 95 % interval: four standard errors, as eight shares are looked at
            assertThat(missed.mean()).isEqualTo(expected, within(missed.high() - missed.low()));
            assertThat(missed.mean()).isEqualTo(expected, within(0.02 * expected + 0.02));
        }
    }

    @Test
    void theCheapestNumberInStoreIsTheNewsvendors() {
        StudyResult result = study(400, 4);
        int best = IntStream.rangeClosed(1, 8)
                .boxed()
                .min(Comparator.comparingDouble(ErlangLossReferenceTest::costPerFill))
                .orElseThrow();
        assertThat(result.cheapest()).isEqualTo("stored " + (best - 1));
        for (AlternativeResult each : result.alternatives()) {
            double expected = costPerFill(each.alternative().places());
            assertThat(Objects.requireNonNull(each.costPerFill()).mean()).isEqualTo(expected, within(0.01 * expected));
        }
    }

    @Test
    void ninetyFivePercentIntervalsHoldTheTruthNineteenTimesInTwenty() {
        int held = 0;
        int asked = 300;
        double truth = FILLS_A_YEAR * lost(2, FILLS_A_YEAR / 365.0 * LEAD_D);
        for (int seed = 0; seed < asked; seed++) {
            Estimate missed = Studies.done(Studying.study(request(List.of(1), 20, seed), 1, StudyWatch.NONE))
                    .alternatives()
                    .get(0)
                    .usage()
                    .missedPerYear();
            held += missed.low() <= truth && truth <= missed.high() ? 1 : 0;
        }
        // binomial(300, 0.95): 285 plus or minus three standard deviations of 3.8
        assertThat(held).isBetween(273, 297);
    }

    private static double costPerFill(int cylinders) {
        double lost = lost(cylinders, FILLS_A_YEAR / 365.0 * LEAD_D);
        double made = FILLS_A_YEAR * (1 - lost);
        return (cylinders * RENT_A_DAY * 365 + FILLS_A_YEAR * lost * MISSED_PRICE) / made + 60 + 35;
    }

    /** The share lost of Poisson arrivals, by the usual recursion. */
    private static double lost(int cylinders, double offered) {
        double lost = 1.0;
        for (int c = 1; c <= cylinders; c++) {
            lost = offered * lost / (c + offered * lost);
        }
        return lost;
    }

    private static StudyResult study(long runs, long seed) {
        return Studies.done(request(IntStream.range(0, 8).boxed().toList(), runs, seed));
    }

    private static StudyRequest request(List<Integer> stored, long runs, long seed) {
        SupplyKind supply = new SupplyKind(
                "small",
                Studies.supply(10, 200).waterVolume(),
                Studies.supply(10, 200).deliveredLowest(),
                60,
                RENT_A_DAY);
        List<Alternative> ways = new ArrayList<>();
        for (int n : stored) {
            ways.add(new Alternative("stored " + n, 1, n, supply, ExchangeHabit.whenTheTopCannotFinish(1), null));
        }
        return new StudyRequest(
                Studies.IDEAL,
                Demand.even(FILLS_A_YEAR, List.of(Studies.bottle("large", 10, 0, 0, 90))),
                new Prices(35, LEAD_D, MISSED_PRICE, 0, 10),
                ways,
                Extent.of(10, runs, seed));
    }
}
