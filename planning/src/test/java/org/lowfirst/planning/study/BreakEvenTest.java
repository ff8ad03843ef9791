package org.lowfirst.planning.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** At a break-even point, studied again with the same seed, both alternatives cost the same. */
final class BreakEvenTest {

    private static StudyRequest request(double content, double delivery, double rent) {
        SupplyKind base = Studies.supply(50, 200);
        SupplyKind supply = new SupplyKind(base.name(), base.waterVolume(), base.deliveredLowest(), content, rent);
        return new StudyRequest(
                Studies.REAL,
                Studies.mixed(150),
                new Prices(delivery, 0, 0, 90, 10),
                List.of(
                        new Alternative("two", 2, supply, ExchangeHabit.oneAtATime()),
                        new Alternative("five", 5, supply, ExchangeHabit.oneAtATime()),
                        new Alternative("five in pairs", 5, supply, ExchangeHabit.inPairs())),
                Extent.of(10, 30, 11));
    }

    @Test
    void theFactorsAreWhereTheCostsMeet() {
        StudyResult study = Studies.done(request(60, 35, 0.25));
        assertThat(study.breakEvens()).hasSize(2);
        int found = 0;
        for (BreakEven even : study.breakEvens()) {
            found += meets(even, even.contentFactor(), request(60 * or1(even.contentFactor()), 35, 0.25));
            found += meets(even, even.deliveryFactor(), request(60, 35 * or1(even.deliveryFactor()), 0.25));
            found += meets(even, even.rentFactor(), request(60, 35, 0.25 * or1(even.rentFactor())));
        }
        assertThat(found).isGreaterThanOrEqualTo(3);
    }

    @Test
    void aRateOfFillsIsWhereTheCostsMeetToWithinChance() {
        StudyResult study = Studies.done(request(60, 35, 0.25));
        for (BreakEven even : study.breakEvens()) {
            Double fills = even.fillsPerYear();
            if (fills != null && fills > 20 && fills < 2_000) {
                StudyRequest base = request(60, 35, 0.25);
                StudyResult there = Studies.done(new StudyRequest(
                        base.site(), Studies.mixed(fills), base.prices(), base.alternatives(), Extent.of(10, 200, 12)));
                double one = cost(there, even.alternative());
                assertThat(one).isEqualTo(cost(there, even.against()), within(0.03 * one));
            }
        }
    }

    private static double or1(@org.jspecify.annotations.Nullable Double factor) {
        return factor == null ? 1.0 : factor;
    }

    private static int meets(BreakEven even, @org.jspecify.annotations.Nullable Double factor, StudyRequest changed) {
        if (factor == null) {
            return 0;
        }
        StudyResult there = Studies.done(changed);
        double one = cost(there, even.alternative());
        assertThat(one).isEqualTo(cost(there, even.against()), within(1e-9 * one));
        return 1;
    }

    private static double cost(StudyResult study, String name) {
        return Objects.requireNonNull(study.alternatives().stream()
                        .filter(a -> a.alternative().name().equals(name))
                        .findFirst()
                        .orElseThrow()
                        .costPerFill())
                .mean();
    }
}
