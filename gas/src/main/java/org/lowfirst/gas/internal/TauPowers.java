package org.lowfirst.gas.internal;

import java.util.Arrays;

/**
 * The powers of tau that the terms of an equation need. Exponents that are all multiples of a half, as in the older
 * equations, are built by multiplication; others by {@link Math#pow}. Immutable.
 */
final class TauPowers {

    /** For each term, where in the array of powers its own is. */
    final int[] indexOfTerm;

    private final double[] exponents;
    private final boolean halves;
    private final int lowestHalves;

    TauPowers(double[] t) {
        double[] sorted = t.clone();
        Arrays.sort(sorted);
        boolean allHalves = t.length > 0;
        for (double exponent : t) {
            allHalves &= Math.rint(2 * exponent) == 2 * exponent;
        }
        halves = allHalves;
        if (halves) {
            lowestHalves = (int) Math.rint(2 * sorted[0]);
            exponents = new double[(int) Math.rint(2 * sorted[t.length - 1]) - lowestHalves + 1];
            for (int k = 0; k < exponents.length; k++) {
                exponents[k] = 0.5 * (lowestHalves + k);
            }
        } else {
            lowestHalves = 0;
            exponents = sorted;
        }
        indexOfTerm = new int[t.length];
        for (int i = 0; i < t.length; i++) {
            indexOfTerm[i] = Arrays.binarySearch(exponents, t[i]);
        }
    }

    /** How long the array of powers must be. */
    int size() {
        return exponents.length;
    }

    /** Writes the powers of tau into {@code powers}, which has at least {@link #size()} places. */
    void fill(double tau, double[] powers) {
        if (!halves) {
            for (int k = 0; k < exponents.length; k++) {
                powers[k] = Math.pow(tau, exponents[k]);
            }
            return;
        }
        double root = Math.sqrt(tau);
        double squared = tau * tau;
        powers[0] = lowestHalves == -1 ? 1.0 / root : lowestHalves == 0 ? 1.0 : Math.pow(tau, exponents[0]);
        // Four strands, so that no multiplication waits for the one before it.
        for (int k = 1; k < exponents.length; k++) {
            powers[k] = k < 4 ? (k == 2 ? powers[0] * tau : powers[k - 1] * root) : powers[k - 4] * squared;
        }
    }
}
