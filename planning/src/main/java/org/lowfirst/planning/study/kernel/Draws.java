package org.lowfirst.planning.study.kernel;

/**
 * Random numbers that are the same on every machine and in every version of Java. Mutable, used by one thread.
 *
 * <p>The state walks in equal steps and each output is a mix of the state (SplitMix64), so a stream can be started anywhere from
 * two numbers and streams of neighbouring numbers do not resemble each other.
 *
 * @see "[Steele2014]"
 */
public final class Draws {

    private static final long STEP = 0x9e3779b97f4a7c15L;
    private static final double FROM_53_BITS = 0x1.0p-53;

    private long state;

    /** The stream of this name under this seed. */
    public Draws(long seed, long stream) {
        this(mix(mix(seed) + STEP * stream));
    }

    /** The stream from a state on. */
    Draws(long state) {
        this.state = state;
    }

    /** A number the stream names by a place in a sequence: the same whatever was drawn before. */
    public static double uniformAt(long seed, long stream, long place) {
        return unit(mix(mix(mix(seed) + STEP * stream) + STEP * (place + 1)));
    }

    public long bits() {
        state += STEP;
        return mix(state);
    }

    /** Uniform, 0 included, 1 not. */
    public double uniform() {
        return unit(bits());
    }

    /** Exponential with mean 1. */
    public double exponential() {
        return -Math.log(1.0 - uniform());
    }

    /** Standard normal, by the polar form of Box and Muller. */
    public double normal() {
        while (true) {
            double x = 2.0 * uniform() - 1.0;
            double y = 2.0 * uniform() - 1.0;
            double s = x * x + y * y;
            if (s < 1.0 && s > 0.0) {
                return x * Math.sqrt(-2.0 * Math.log(s) / s);
            }
        }
    }

    /**
     * Gamma with this shape and mean = shape.
     *
     * @param shape above 0
     * @see "[MarsagliaTsang2000]"
     */
    public double gamma(double shape) {
        if (shape < 1.0) {
            return gamma(shape + 1.0) * Math.pow(1.0 - uniform(), 1.0 / shape);
        }
        double d = shape - 1.0 / 3.0;
        double c = 1.0 / Math.sqrt(9.0 * d);
        while (true) {
            double x = normal();
            double v = 1.0 + c * x;
            if (v > 0.0) {
                v = v * v * v;
                if (Math.log(1.0 - uniform()) < 0.5 * x * x + d - d * v + d * Math.log(v)) {
                    return d * v;
                }
            }
        }
    }

    /** Poisson, by counting exponential gaps; for means up to some hundreds. */
    public int poisson(double mean) {
        int count = 0;
        double left = mean - exponential();
        while (left > 0.0) {
            count++;
            left -= exponential();
        }
        return count;
    }

    private static double unit(long bits) {
        return (bits >>> 11) * FROM_53_BITS;
    }

    private static long mix(long z) {
        long a = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        long b = (a ^ (a >>> 27)) * 0x94d049bb133111ebL;
        return b ^ (b >>> 31);
    }
}
