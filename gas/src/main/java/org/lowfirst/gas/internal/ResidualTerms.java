package org.lowfirst.gas.internal;

import java.util.Arrays;

/**
 * The residual part of the reduced Helmholtz energy: sum n delta^d tau^t exp(-delta^l). Immutable.
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
    final TauPowers tauPowers;

    ResidualTerms(SubstanceTable table) {
        n = table.column("n");
        d = table.wholeColumn("d");
        t = table.column("t");
        l = table.wholeColumn("l");
        tauPowers = new TauPowers(t);
    }

    int highestOf(int[] exponents) {
        int highest = 0;
        for (int exponent : exponents) {
            highest = Math.max(highest, exponent);
        }
        return highest;
    }

    /**
     * The derivative of the sum by delta at one temperature, as one polynomial in delta for each l (index): the derivative
     * is the sum over l of {@code exp(-delta^l) polynomial[l](delta)}, without the exponential where l = 0.
     *
     * @return coefficients, lowest power first; an empty array where no term has this l
     */
    double[][] deltaDerivative(double tau) {
        int highestL = highestOf(l);
        int size = highestOf(d) + highestL;
        double[][] polynomial = new double[highestL + 1][0];
        double[] powers = new double[tauPowers.size()];
        tauPowers.fill(tau, powers);
        for (int i = 0; i < n.length; i++) {
            if (polynomial[l[i]].length == 0) {
                polynomial[l[i]] = new double[size];
            }
            double c = n[i] * powers[tauPowers.indexOfTerm[i]];
            polynomial[l[i]][d[i] - 1] += c * d[i];
            if (l[i] > 0) {
                polynomial[l[i]][d[i] - 1 + l[i]] -= c * l[i];
            }
        }
        for (int k = 0; k <= highestL; k++) {
            polynomial[k] = trimmed(polynomial[k]);
        }
        return polynomial;
    }

    private static double[] trimmed(double[] coefficients) {
        int length = coefficients.length;
        while (length > 0 && coefficients[length - 1] == 0.0) {
            length--;
        }
        return Arrays.copyOf(coefficients, length);
    }
}
