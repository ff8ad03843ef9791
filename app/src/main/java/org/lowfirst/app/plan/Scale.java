package org.lowfirst.app.plan;

/** Round numbers for an axis. */
final class Scale {

    private static final int FEWEST_STEPS = 3;

    private Scale() {}

    /** The end of an axis that has room for {@code top}: the next step mark at or above it. */
    static double endFor(double top) {
        double step = stepFor(top);
        return Math.max(step, Math.ceil(top / step - 1e-9) * step);
    }

    /** The largest of 1, 2, 5 times a power of ten that divides the way to {@code top} into at least three. */
    static double stepFor(double top) {
        if (!(top > 0.0)) {
            return 1.0;
        }
        double power = Math.pow(10.0, Math.floor(Math.log10(top)));
        for (double factor : new double[] {5.0, 2.0, 1.0, 0.5, 0.2}) {
            if (top / (factor * power) >= FEWEST_STEPS) {
                return factor * power;
            }
        }
        return 0.1 * power;
    }
}
