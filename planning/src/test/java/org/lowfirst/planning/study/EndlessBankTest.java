package org.lowfirst.planning.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.lowfirst.gas.GaugePressure;
import org.lowfirst.gas.Temperature;

/** The limit that no bank betters. */
final class EndlessBankTest {

    @Test
    void forOneBottleItIsAllGasAboveTheStartReading() {
        Limit limit = limit(study(1, 30, 30).alternatives().get(0));
        // ideal gas: 50 L (200 - 30) / (3 L (150 - 30))
        assertThat(limit.fillsPerSupply()).isEqualTo(50.0 * 170 / (3 * 120), within(1e-9));
    }

    @Test
    void largerBanksComeNearItAndNeverPassIt() {
        double before = 0;
        for (AlternativeResult result : study(40, 30, 30).alternatives()) {
            double fills =
                    Objects.requireNonNull(result.usage().fillsPerSupply()).mean();
            assertThat(fills).isLessThanOrEqualTo(limit(result).fillsPerSupply() * 1.001);
            assertThat(fills).isGreaterThanOrEqualTo(before * 0.99);
            before = fills;
        }
        assertThat(before).isGreaterThan(0.95 * 50.0 * 170 / (3 * 120));
    }

    @Test
    void withManyStartsAndTemperaturesItStillHolds() {
        StudyResult result = Studies.done(new StudyRequest(
                Studies.REAL, Studies.mixed(2_000), Studies.PRICES, banks(30, null), Extent.of(20, 3, 2)));
        for (AlternativeResult each : result.alternatives()) {
            Estimate fills = Objects.requireNonNull(each.usage().fillsPerSupply());
            assertThat(fills.mean()).isLessThanOrEqualTo(limit(each).fillsPerSupply() * 1.005);
            assertThat(Objects.requireNonNull(each.costPerFill()).mean())
                    .isGreaterThan(limit(each).costPerFill() * 0.995);
        }
        assertThat(Objects.requireNonNull(last(result).usage().fillsPerSupply()).mean())
                .isGreaterThan(0.9 * limit(last(result)).fillsPerSupply());
    }

    /** Large bottles from low readings are the ones a bank without delivery leaves unfinished, and they take most gas. */
    @Test
    void aBankThatLeavesTheThirstyUnfinishedMayPassIt() {
        Demand demand = Demand.even(
                150, List.of(Studies.bottle("small", 1, 60, 60, 100), Studies.bottle("large", 15, 20, 20, 180)));
        AlternativeResult result = last(Studies.done(new StudyRequest(
                Studies.IDEAL, demand, new Prices(0, 30, 0, 0, 10), banks(6, null), Extent.of(10, 20, 1))));
        assertThat(result.usage().missedPerYear().mean()).isGreaterThan(20);
        assertThat(Objects.requireNonNull(result.usage().fillsPerSupply()).mean())
                .isGreaterThan(limit(result).fillsPerSupply());
    }

    /** 50 fills a year take 50 x 3 L x 120 bar = 18,000 bar L; each supply has 50 L x 200 bar. */
    @Test
    void aBankThatLivesOnGasFromBeforeIsToldByItsShare() {
        List<AlternativeResult> results = Studies.done(new StudyRequest(
                        Studies.IDEAL,
                        Demand.even(50, List.of(Studies.bottle("one", 3, 30, 30, 150))),
                        Studies.PRICES,
                        banks(40, null),
                        Extent.of(1, 50, 1)))
                .alternatives();
        AlternativeResult forty = results.get(results.size() - 1);
        assertThat(forty.usage().suppliesPerYear()).isZero();
        assertThat(forty.usage().gasFromBefore()).isEqualTo(1.0, within(1e-12));
        assertThat(forty.usage().tooShort()).isTrue();
        AlternativeResult one = study(1, 30, 30).alternatives().get(0);
        assertThat(one.usage().gasFromBefore()).isEqualTo(0.0, within(0.01));
        assertThat(one.usage().tooShort()).isFalse();
    }

    @Test
    void aBoosterEmptiesSuppliesToItsInlet() {
        Booster booster = new Booster(GaugePressure.ofBar(22), 0, 0, 0);
        StudyResult result = Studies.done(new StudyRequest(
                Studies.IDEAL,
                Demand.even(1_000, List.of(Studies.bottle("one", 3, 30, 30, 150))),
                Studies.PRICES,
                banks(1, booster),
                Extent.of(50, 2, 2)));
        double fills =
                Objects.requireNonNull(last(result).usage().fillsPerSupply()).mean();
        double limit = 50.0 * 178 / (3 * 120);
        assertThat(limit(last(result)).fillsPerSupply()).isEqualTo(limit, within(1e-9));
        // whole fills only
        assertThat(fills).isEqualTo(Math.floor(limit), within(0.01));
    }

    private static AlternativeResult last(StudyResult result) {
        return result.alternatives().get(result.alternatives().size() - 1);
    }

    private static Limit limit(AlternativeResult result) {
        return Objects.requireNonNull(result.limit());
    }

    private static StudyResult study(int largest, double startLowest, double startHighest) {
        assertThat(Studies.IDEAL.temperature().mean()).isEqualTo(Temperature.ofCelsius(15));
        return Studies.done(new StudyRequest(
                Studies.IDEAL,
                Demand.even(5_000, List.of(Studies.bottle("one", 3, startLowest, startHighest, 150))),
                Studies.PRICES,
                banks(largest, null),
                Extent.of(10, 2, 2)));
    }

    private static List<Alternative> banks(int largest, @org.jspecify.annotations.Nullable Booster booster) {
        return IntStream.of(1, 2, 3, 4, 6, 10, 20, 30, 40)
                .filter(n -> n <= largest)
                .mapToObj(n -> new Alternative(
                        "bank of " + n, n, 0, Studies.supply(50, 200), ExchangeHabit.oneAtATime(), booster))
                .toList();
    }
}
