package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ErrorSumTest {

    private static ErrorSum rectangles(double... halves) {
        List<Double> all = java.util.Arrays.stream(halves).boxed().toList();
        double variance = all.stream().mapToDouble(half -> half * half / 3.0).sum();
        return ErrorSum.of(Math.sqrt(variance), all);
    }

    @Test
    void withoutRectanglesItIsTheNormalDistribution() {
        ErrorSum normal = ErrorSum.of(2.0, List.of());
        assertThat(normal.within(0.5)).isCloseTo(2.0 * 0.674490, within(1e-5));
        assertThat(normal.within(0.95)).isCloseTo(2.0 * Gaussian.TWO_SIDED_95, within(1e-9));
        assertThat(normal.below(2.0)).isCloseTo(0.841345, within(1e-6));
    }

    @Test
    void oneRectangleIsCoveredInProportion() {
        ErrorSum one = rectangles(3.0);
        assertThat(one.within(0.5)).isCloseTo(1.5, within(1e-4));
        assertThat(one.within(0.8)).isCloseTo(2.4, within(1e-4));
        assertThat(one.within(0.95)).isCloseTo(2.85, within(1e-4));
    }

    /** Two equal rectangles make a triangle: P(|X| < w) = 1 - (1 - w / 2a)^2. */
    @Test
    void twoEqualRectanglesMakeATriangle() {
        ErrorSum two = rectangles(1.0, 1.0);
        for (double chance : new double[] {0.5, 0.8, 0.95}) {
            assertThat(two.within(chance)).isCloseTo(2.0 * (1.0 - Math.sqrt(1.0 - chance)), within(1e-4));
        }
    }

    /** JCGM 101:2008, 9.2.3 and 9.2.4 (from memory): four rectangles of deviation 1, 1, 1 and 1 or 10. */
    @Test
    void fourRectanglesAreCoveredAsPublished() {
        double unit = Math.sqrt(3.0);
        assertThat(rectangles(unit, unit, unit, unit).within(0.95)).isCloseTo(3.88, within(0.02));
        assertThat(rectangles(unit, unit, unit, 10.0 * unit).within(0.95)).isCloseTo(17.0, within(0.05));
    }

    @Test
    void drawnSumsAreBelowAsOftenAsStated() {
        SplittableRandom chance = new SplittableRandom(20260501L);
        ErrorSum stated = ErrorSum.of(Math.sqrt(5.0 * 5.0 / 3.0 + 2.0 * 2.0 / 3.0 + 1.0), List.of(2.0, 5.0));
        int draws = 40_000;
        for (double x : new double[] {-6.0, -3.0, 0.0, 1.0, 4.0}) {
            int below = 0;
            for (int i = 0; i < draws; i++) {
                double sum = 5.0 * (2.0 * chance.nextDouble() - 1.0)
                        + 2.0 * (2.0 * chance.nextDouble() - 1.0)
                        + chance.nextGaussian();
                below += sum < x ? 1 : 0;
            }
            assertThat(below / (double) draws).isCloseTo(stated.below(x), within(0.008));
        }
    }

    /** A rectangle narrow beside the whole changes nothing that can be seen, nor do rounding errors. */
    @Test
    void aNarrowRectangleIsAsGoodAsNormal() {
        ErrorSum narrow = ErrorSum.of(1.0, Collections.nCopies(3, 0.05));
        assertThat(narrow.within(0.95)).isCloseTo(Gaussian.TWO_SIDED_95, within(1e-9));
    }

    @Test
    void withoutAnyErrorItIsCertain() {
        assertThat(ErrorSum.of(0.0, List.of(0.0)).within(0.95)).isZero();
        assertThat(ErrorSum.of(0.0, List.of()).below(1.0)).isEqualTo(1.0);
        assertThat(ErrorSum.of(0.0, List.of()).below(-1.0)).isZero();
    }
}
