package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Tail areas of the standard normal distribution as statistical tables print them (five decimals; from memory, and worked out
 * again with Python's math.erfc).
 */
class GaussianReferenceTest {

    @ParameterizedTest
    @CsvSource({"0.00, 0.50000", "1.00, 0.15866", "1.64, 0.05050", "1.96, 0.02500", "2.58, 0.00494", "3.00, 0.00135"})
    void tailsAreAsPrinted(double z, double tail) {
        assertThat(Gaussian.above(z)).isCloseTo(tail, within(0.5e-5));
        assertThat(Gaussian.beyond(-z)).isCloseTo(2.0 * tail, within(1e-5));
    }
}
