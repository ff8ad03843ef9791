package org.lowfirst.gas;

/**
 * Amount of gas.
 *
 * @param moles amount [mol], finite, at least 0
 */
public record Amount(double moles) implements Comparable<Amount> {

    public static final Amount NONE = new Amount(0.0);

    public Amount {
        if (!(moles >= 0.0) || Double.isInfinite(moles)) {
            throw new IllegalArgumentException("The amount (" + moles + " mol) must be finite and not below zero.");
        }
    }

    public Amount plus(Amount other) {
        return new Amount(moles + other.moles);
    }

    @Override
    public int compareTo(Amount other) {
        return Double.compare(moles, other.moles);
    }
}
