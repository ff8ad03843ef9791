package org.lowfirst.planning.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import org.hipparchus.distribution.discrete.PascalDistribution;
import org.hipparchus.distribution.discrete.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * When each fill left over costs the same, the order point is the newsvendor's critical fractile: the least k with
 * P(demand <= k) >= missed / (missed + left over) (textbook result, from memory). Distributions from a general-purpose library
 * (Hipparchus).
 */
final class NewsvendorReferenceTest {

    @ParameterizedTest
    @CsvSource({"0.5, 4, 3, 9", "0.5, 10, 2, 50", "1.2, 14, 6, 6", "3, 5, 1, 200", "0.1, 3, 5, 1"})
    void theOrderPointIsTheCriticalFractile(double perDay, double leadDays, double leftOver, double missed) {
        double[] chances = new LeadDemand(new Rate(perDay, 0), leadDays).chances();
        double[] early = new double[chances.length];
        for (int i = 0; i < early.length; i++) {
            early[i] = leftOver * i;
        }
        int point = OrderAt.each(early, chances, missed).stream()
                .min(Comparator.comparingDouble(OrderAt::cost))
                .orElseThrow()
                .fillsLeft();
        int expected =
                new PoissonDistribution(perDay * leadDays).inverseCumulativeProbability(missed / (missed + leftOver));
        assertThat(point).isEqualTo(expected);
    }

    @Test
    void demandInTheLeadTimeIsPoissonOrNegativeBinomial() {
        double[] known = new LeadDemand(new Rate(0.7, 0), 9).chances();
        PoissonDistribution poisson = new PoissonDistribution(6.3);
        double[] uncertain = new LeadDemand(new Rate(0.7, 0.5), 9).chances();
        // shape 1 / 0.5^2 = 4, success probability 4 / (4 + 6.3)
        PascalDistribution pascal = new PascalDistribution(4, 4 / 10.3);
        double sum = 0;
        for (int i = 0; i < known.length; i++) {
            assertThat(known[i]).isEqualTo(poisson.probability(i), within(1e-12));
            sum += known[i];
        }
        assertThat(sum).isEqualTo(1, within(1e-9));
        sum = 0;
        for (int i = 0; i < uncertain.length; i++) {
            assertThat(uncertain[i]).isEqualTo(pascal.probability(i), within(1e-12));
            sum += uncertain[i];
        }
        assertThat(sum).isEqualTo(1, within(1e-6));
    }
}
