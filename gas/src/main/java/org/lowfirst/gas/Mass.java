package org.lowfirst.gas;

/**
 * A mass.
 *
 * @param kilograms mass [kg], finite, at least 0
 */
public record Mass(double kilograms) {

    /** International avoirdupois pound (exact by definition). */
    private static final double KILOGRAMS_PER_POUND = 0.45359237;

    public Mass {
        if (!(kilograms >= 0.0) || Double.isInfinite(kilograms)) {
            throw new IllegalArgumentException("The mass (" + kilograms + " kg) must be finite and not below zero.");
        }
    }

    public static Mass ofPounds(double pounds) {
        return new Mass(pounds * KILOGRAMS_PER_POUND);
    }

    public double toPounds() {
        return kilograms / KILOGRAMS_PER_POUND;
    }
}
