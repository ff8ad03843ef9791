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

    final double[] n;
    final int[] d;
    final double[] t;
    final int[] l;
    final int highestD;
    final int highestL;
    final TauPowers tauPowers;
    private final boolean[] used;

    ResidualTerms(SubstanceTable table) {
        n = table.column("n");
        d = table.wholeColumn("d", 1, 20);
        t = table.column("t");
        l = table.wholeColumn("l", 0, 6);
        highestD = highestOf(d);
        highestL = highestOf(l);
        tauPowers = new TauPowers(t);
        used = new boolean[highestL + 1];
        for (int exponent : l) {
            used[exponent] = true;
        }
    }

    /** Whether any term is damped by exp(-delta^l). */
    boolean uses(int exponent) {
        return used[exponent];
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
        int[] size = new int[highestL + 1];
        for (int i = 0; i < n.length; i++) {
            size[l[i]] = Math.max(size[l[i]], d[i] + l[i]);
        }
        double[][] polynomials = new double[highestL + 1][];
        for (int k = 0; k <= highestL; k++) {
            polynomials[k] = new double[size[k]];
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
        for (double[] polynomial : polynomials) {
            Arrays.fill(polynomial, 0.0);
        }
        for (int i = 0; i < n.length; i++) {
            double c = n[i] * powers[tauPowers.indexOfTerm[i]];
            polynomials[l[i]][d[i] - 1] += c * d[i];
            if (l[i] > 0) {
                polynomials[l[i]][d[i] - 1 + l[i]] -= c * l[i];
            }
        }
    }
}
