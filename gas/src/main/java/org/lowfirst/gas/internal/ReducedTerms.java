package org.lowfirst.gas.internal;

/** A sum N delta^d tau^t exp(-delta^l), without the exponential where l = 0, of a transport equation. Immutable. */
final class ReducedTerms {

    private final double[] n;
    private final double[] t;
    private final int[] d;
    private final int[] l;

    ReducedTerms(SubstanceTable table) {
        n = table.column("N");
        t = table.column("t");
        d = table.wholeColumn("d", 0, 20);
        l = table.wholeColumn("l", 0, 6);
    }

    double sum(double delta, double logTau) {
        double sum = 0.0;
        for (int i = 0; i < n.length; i++) {
            double exponent = t[i] * logTau - (l[i] == 0 ? 0.0 : power(delta, l[i]));
            sum += n[i] * power(delta, d[i]) * (exponent == 0.0 ? 1.0 : Math.exp(exponent));
        }
        return sum;
    }

    private static double power(double x, int exponent) {
        double product = 1.0;
        for (int k = 0; k < exponent; k++) {
            product *= x;
        }
        return product;
    }
}
