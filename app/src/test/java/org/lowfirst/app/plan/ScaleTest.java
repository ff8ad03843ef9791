package org.lowfirst.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ScaleTest {

    @ParameterizedTest
    @CsvSource({
        "190, 50, 200",
        "150, 50, 150",
        "2200, 500, 2500",
        "131, 20, 140",
        "15.2, 5, 20",
        "99, 20, 100",
        "1, 0.2, 1"
    })
    void stepsAreRoundAndReachTheTop(double top, double step, double end) {
        assertThat(Scale.stepFor(top)).isEqualTo(step);
        assertThat(Scale.endFor(top)).isCloseTo(end, org.assertj.core.api.Assertions.within(1e-9));
    }
}
