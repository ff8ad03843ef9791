package org.lowfirst.planning.study.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Percentiles within half a percent, in parts as in one. */
final class PercentilesTest {

    @Test
    void percentilesAreWithinHalfAPercentOfTheSortedValues() {
        Draws draws = new Draws(1, 2);
        double[] values = new double[10_000];
        Percentiles whole = new Percentiles();
        Percentiles[] parts = {new Percentiles(), new Percentiles(), new Percentiles()};
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.exp(3 * draws.normal());
            whole.add(values[i]);
            parts[i % 3].add(values[i]);
        }
        Arrays.sort(values);
        for (double share : new double[] {0.01, 0.05, 0.5, 0.95, 1.0}) {
            double exact = values[(int) Math.ceil(share * values.length) - 1];
            assertThat(whole.at(share)).isEqualTo(exact, within(0.005 * exact));
        }
        parts[2].add(parts[0]);
        parts[2].add(parts[1]);
        assertThat(parts[2]).isEqualTo(whole);
        assertThat(parts[2].total()).isEqualTo(10_000);
    }
}
