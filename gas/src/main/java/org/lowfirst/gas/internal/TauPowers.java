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
        halves = Arrays.stream(t).allMatch(exponent -> Math.rint(2 * exponent) == 2 * exponent);
        indexOfTerm = new int[t.length];
        if (halves) {
            double lowest = Arrays.stream(t).min().orElse(0);
            double highest = Arrays.stream(t).max().orElse(0);
            lowestHalves = (int) Math.rint(2 * lowest);
            exponents = new double[(int) Math.rint(2 * (highest - lowest)) + 1];
            for (int k = 0; k < exponents.length; k++) {
                exponents[k] = lowest + 0.5 * k;
            }
        } else {
            lowestHalves = 0;
            exponents = Arrays.stream(t).distinct().sorted().toArray();
        }
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
