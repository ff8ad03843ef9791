package org.lowfirst.planning.study.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Bits against the same generator in the JDK; means and variances against the textbook's. */
final class DrawsReferenceTest {

    private static final int COUNT = 400_000;

    @Test
    void bitsAreThoseOfTheJdksSplittableRandom() {
        for (long seed : new long[] {0, 1, -7, 1234567}) {
            Draws draws = new Draws(seed);
            SplittableRandom jdk = new SplittableRandom(seed);
            for (int i = 0; i < 1_000; i++) {
                assertThat(draws.bits()).isEqualTo(jdk.nextLong());
            }
        }
    }

    @Test
    void aNumberAtAPlaceIsTheOneDrawnThere() {
        Draws draws = new Draws(5, 9);
        for (int place = 0; place < 100; place++) {
            assertThat(Draws.uniformAt(5, 9, place)).isEqualTo(draws.uniform());
        }
    }

    @Test
    void meansAndVariancesAreRight() {
        has(Draws::uniform, 0.5, 1.0 / 12);
        has(Draws::exponential, 1, 1);
        has(Draws::normal, 0, 1);
        has(draws -> draws.gamma(0.4), 0.4, 0.4);
        has(draws -> draws.gamma(7.5), 7.5, 7.5);
        has(draws -> draws.poisson(3.2), 3.2, 3.2);
    }

    private static void has(ToDoubleFunction<Draws> kind, double mean, double variance) {
        Draws draws = new Draws(3, 4);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < COUNT; i++) {
            double value = kind.applyAsDouble(draws);
            sum += value;
            squares += (value - mean) * (value - mean);
        }
        assertThat(sum / COUNT).isEqualTo(mean, within(4 * Math.sqrt(variance / COUNT)));
        assertThat(squares / COUNT).isEqualTo(variance, within(0.02 * variance));
    }

    @Test
    void neighbouringStreamsDoNotMoveTogether() {
        double products = 0;
        for (long stream = 0; stream < COUNT; stream++) {
            products += (new Draws(1, stream).uniform() - 0.5) * (new Draws(1, stream + 1).uniform() - 0.5);
        }
        assertThat(12 * products / COUNT).isEqualTo(0.0, within(4 / Math.sqrt(COUNT)));
    }
}
