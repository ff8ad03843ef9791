package org.lowfirst.planning.contents;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A sum of independent errors about zero: rectangular ones and a normal rest. Immutable and thread-safe.
 *
 * <p>The two widest rectangles keep their shape, the others and what is narrow beside the whole count to the normal part. With
 * G(x) = x Phi(x/s) + s phi(x/s) and H(x) = ((x^2 + s^2) Phi(x/s) + x s phi(x/s)) / 2, the first and second integrals of
 * Phi(x/s), the distribution function is
 *
 * <pre>
 * one rectangle of half-width a    [G(x + a) - G(x - a)] / (2 a)
 * two of half-widths a and b       [H(x + a + b) - H(x + a - b) - H(x - a + b) + H(x - a - b)] / (4 a b)
 * </pre>
 *
 * <p>Symbols: s standard deviation of the normal part, a and b half-widths, all in one unit.
 */
final class ErrorSum {

    private static final int KEPT = 2;

    /** A rectangle whose deviation is less than this share of the whole counts to the normal part. */
    private static final double NARROW = 0.05;

    /** Keeps s from being zero, as a share of the whole. */
    private static final double LEAST = 1e-6;

    /** Halvings of the bracket: to 1e-12 of it. */
    private static final int HALVINGS = 40;

    /** Beyond so many deviations nothing is looked for. */
    private static final double FARTHEST = 8.0;

    private final double deviation;
    private final double s;
    private final List<Double> halves;

    private ErrorSum(double deviation, double s, List<Double> halves) {
        this.deviation = deviation;
        this.s = s;
        this.halves = halves;
    }

    /**
     * @param deviation standard deviation of the whole sum, at least 0
     * @param rectangles half-widths of the rectangular errors in it
     */
    static ErrorSum of(double deviation, List<Double> rectangles) {
        List<Double> halves = new ArrayList<>(rectangles.stream()
                .map(Math::abs)
                .filter(half -> half / Math.sqrt(3.0) > NARROW * deviation)
                .sorted(Comparator.reverseOrder())
                .limit(KEPT)
                .toList());
        double variance = deviation * deviation;
        for (double half : halves) {
            variance -= half * half / 3.0;
        }
        return new ErrorSum(
                deviation, Math.sqrt(Math.max(variance, LEAST * LEAST * deviation * deviation)), List.copyOf(halves));
    }

    /** Chance that the sum is below {@code x}. */
    double below(double x) {
        if (!(deviation > 0.0)) {
            return x > 0.0 ? 1.0 : 0.0;
        }
        double chance = switch (halves.size()) {
            case 0 -> Gaussian.above(-x / s);
            case 1 -> one(x, halves.get(0));
            default -> two(x, halves.get(0), halves.get(1));
        };
        return Math.min(1.0, Math.max(0.0, chance));
    }

    /** Half-width that holds the sum with a chance, more than 0 and less than 1. */
    double within(double chance) {
        double low = 0.0;
        double high = FARTHEST * deviation;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (2.0 * below(middle) - 1.0 < chance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    private double one(double x, double a) {
        return (first(x + a) - first(x - a)) / (2.0 * a);
    }

    private double two(double x, double a, double b) {
        return (second(x + a + b) - second(x + a - b) - second(x - a + b) + second(x - a - b)) / (4.0 * a * b);
    }

    private double first(double x) {
        return x * Gaussian.above(-x / s) + s * Gaussian.density(x / s);
    }

    private double second(double x) {
        return 0.5 * ((x * x + s * s) * Gaussian.above(-x / s) + x * s * Gaussian.density(x / s));
    }
}
