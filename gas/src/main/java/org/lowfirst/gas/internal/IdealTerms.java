package org.lowfirst.gas.internal;

/**
 * The ideal-gas part of the reduced Helmholtz energy: ln(delta) + c ln(tau) + sum n ln(1 - exp(-theta tau)) + a1 + a2 tau.
 * Immutable.
 *
 * @see "[Stewart1991]"
 */
final class IdealTerms {

    final double logTau;
    final double a1;
    final double a2;
    final double[] n;
    final double[] theta;

    IdealTerms(SubstanceFile file) {
        logTau = file.number("ideal-log-tau");
        a1 = file.number("ideal-a1");
        a2 = file.number("ideal-a2");
        SubstanceTable oscillators = file.table("ideal-oscillators");
        n = oscillators.column("n");
        theta = oscillators.column("theta");
    }

    /** The whole part at a reduced density above 0. */
    double value(double delta, double tau) {
        double sum = Math.log(delta) + logTau * Math.log(tau) + a1 + a2 * tau;
        for (int i = 0; i < n.length; i++) {
            sum += n[i] * Math.log1p(-Math.exp(-theta[i] * tau));
        }
        return sum;
    }
}
