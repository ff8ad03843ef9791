package org.lowfirst.planning.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * One supply of ideal gas and one kind of bottle: every supply makes the same whole number of fills, so that the years are a
 * renewal process and a fill costs (price of a cycle) / (fills of a cycle) + rent / fills (renewal-reward theorem, textbook, from
 * memory).
 */
final class RenewalReferenceTest {

    @ParameterizedTest
    @ValueSource(doubles = {2, 3, 5, 8, 12})
    void aFillCostsItsPartOfTheCycleAndOfTheRent(double bottleLitres) {
        double full = 200;
        double target = 150;
        double start = 30;
        StudyResult study = Studies.done(new StudyRequest(
                Studies.IDEAL,
                Demand.even(400, List.of(Studies.bottle("one", bottleLitres, start, start, target))),
                Studies.PRICES,
                List.of(new Alternative("one", 1, Studies.supply(50, full), ExchangeHabit.oneAtATime())),
                Extent.of(50, 40, 7)));
        AlternativeResult result = study.alternatives().get(0);
        // after k fills the supply reads full - k (target - start) Vb / Vs, and it must still be at the target
        double fills = Math.floor((full - target) * 50 / ((target - start) * bottleLitres) + 1e-9);
        assertThat(Objects.requireNonNull(result.usage().fillsPerSupply()).mean())
                .isEqualTo(fills, within(0.001 * fills));
        double expected = (60 + 35) / fills + 0.25 * 365 / 400;
        Estimate cost = Objects.requireNonNull(result.costPerFill());
        assertThat(cost.mean()).isEqualTo(expected, within(0.002 * expected));
        assertThat(study.worstImbalance()).isLessThan(1e-9);
    }
}
