package org.lowfirst.gas.internal;

import java.util.Arrays;

/**
 * The residual part of the reduced Helmholtz energy: sum n delta^d tau^t exp(-delta^l), without the exponential where l = 0.
 * Immutable.
 *
 * <p>Symbols: delta = rho / rho_reducing, tau = T_reducing / T.
 *
 * @see "[SchmidtWagner1985]"
 */
final class ResidualTerms {

    /** Terms in the order of their l. */
    final double[] n;

    final double[] dAsDouble;
    /** d - 1. */
    final int[] dBelow;

    final double[] t;
    /** The terms of l are those from firstOf[l] up to but without firstOf[l + 1]. */
    final int[] firstOf;

    final int highestD;
    final int highestL;
    final TauPowers tauPowers;

    ResidualTerms(SubstanceTable table) {
        double[] nRead = table.column("n");
        double[] tRead = table.column("t");
        int[] dRead = table.wholeColumn("d", 1, 20);
        int[] lRead = table.wholeColumn("l", 0, 6);
        int count = nRead.length;
        n = new double[count];
        t = new double[count];
        dAsDouble = new double[count];
        dBelow = new int[count];
        highestD = highestOf(dRead);
        highestL = highestOf(lRead);
        firstOf = new int[highestL + 2];
        int to = 0;
        for (int l = 0; l <= highestL; l++) {
            for (int from = 0; from < count; from++) {
                if (lRead[from] == l) {
                    n[to] = nRead[from];
                    t[to] = tRead[from];
                    dAsDouble[to] = dRead[from];
                    dBelow[to] = dRead[from] - 1;
                    to++;
                }
            }
            firstOf[l + 1] = to;
        }
        tauPowers = new TauPowers(t);
    }

    private static int highestOf(int[] exponents) {
        int highest = 0;
        for (int exponent : exponents) {
            highest = Math.max(highest, exponent);
        }
        return highest;
    }

    /** Places for {@link #deltaDerivative}: one polynomial for each l, empty where no term has it. */
    double[][] emptyDeltaDerivative() {
        double[][] polynomials = new double[highestL + 1][0];
        for (int l = 0; l <= highestL; l++) {
            for (int i = firstOf[l]; i < firstOf[l + 1]; i++) {
                if (polynomials[l].length < dBelow[i] + 1 + l) {
                    polynomials[l] = new double[dBelow[i] + 1 + l];
                }
            }
        }
        return polynomials;
    }

    /**
     * The derivative of the sum by delta at one temperature: the sum over l of {@code exp(-delta^l) polynomials[l](delta)},
     * without the exponential where l = 0.
     *
     * @param powers powers of tau, from {@link TauPowers#fill}
     * @param polynomials where the coefficients go, lowest power first
     */
    void deltaDerivative(double[] powers, double[][] polynomials) {
        for (int l = 0; l <= highestL; l++) {
            double[] polynomial = polynomials[l];
            Arrays.fill(polynomial, 0.0);
            for (int i = firstOf[l]; i < firstOf[l + 1]; i++) {
                double c = n[i] * powers[tauPowers.indexOfTerm[i]];
                polynomial[dBelow[i]] += c * dAsDouble[i];
                if (l > 0) {
                    polynomial[dBelow[i] + l] -= c * l;
                }
            }
        }
    }
}
