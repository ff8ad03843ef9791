package org.lowfirst.gas.internal;

/** Polynomials by Horner's rule, coefficients lowest power first. */
final class Polynomials {

    private Polynomials() {}

    static double value(double[] coefficients, double x) {
        double sum = 0.0;
        for (int k = coefficients.length - 1; k >= 0; k--) {
            sum = sum * x + coefficients[k];
        }
        return sum;
    }

    static double slope(double[] coefficients, double x) {
        double sum = 0.0;
        for (int k = coefficients.length - 1; k >= 1; k--) {
            sum = sum * x + k * coefficients[k];
        }
        return sum;
    }

    /** x to a small whole power. */
    static double power(double x, int exponent) {
        double product = 1.0;
        for (int k = 0; k < exponent; k++) {
            product *= x;
        }
        return product;
    }
}
