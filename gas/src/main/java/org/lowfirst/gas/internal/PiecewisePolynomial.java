package org.lowfirst.gas.internal;

import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function from 0 to a top as polynomials on equal pieces, continuous from piece to piece. Immutable.
 *
 * <p>Each polynomial passes through the function at the Chebyshev points of its piece, both ends included.
 */
final class PiecewisePolynomial {

    static final int DEGREE = 6;
    static final int PIECES = 48;

    private static final int POINTS = DEGREE + 1;
    private static final double[] NODES = nodes();

    private final double top;
    private final double piecesPerUnit;
    /** Coefficients in the place within the piece, -1 to 1, lowest power first, piece after piece. */
    private final double[] coefficients = new double[PIECES * POINTS];

    PiecewisePolynomial(DoubleUnaryOperator function, double top) {
        this.top = top;
        piecesPerUnit = PIECES / top;
        double[] values = new double[POINTS];
        double end = function.applyAsDouble(0.0);
        for (int piece = 0; piece < PIECES; piece++) {
            values[0] = end;
            for (int k = 1; k < POINTS; k++) {
                values[k] = function.applyAsDouble(Math.min(top, (piece + 0.5 * (1.0 + NODES[k])) / piecesPerUnit));
            }
            end = values[DEGREE];
            fit(values, piece * POINTS);
        }
    }

    private static double[] nodes() {
        double[] nodes = new double[POINTS];
        for (int k = 0; k < POINTS; k++) {
            nodes[k] = -Math.cos(Math.PI * k / DEGREE);
        }
        return nodes;
    }

    /** Newton's divided differences, multiplied out to powers. */
    private void fit(double[] values, int at) {
        double[] difference = values.clone();
        for (int order = 1; order < POINTS; order++) {
            for (int k = DEGREE; k >= order; k--) {
                difference[k] = (difference[k] - difference[k - 1]) / (NODES[k] - NODES[k - order]);
            }
        }
        for (int k = DEGREE; k >= 0; k--) {
            for (int power = DEGREE - k; power > 0; power--) {
                coefficients[at + power] = coefficients[at + power - 1] - NODES[k] * coefficients[at + power];
            }
            coefficients[at] = difference[k] - NODES[k] * coefficients[at];
        }
    }

    double top() {
        return top;
    }

    /** The function at a place from 0 to the top. */
    double value(double at) {
        double place = at * piecesPerUnit;
        int piece = Math.min((int) place, PIECES - 1);
        double x = 2.0 * (place - piece) - 1.0;
        int first = piece * POINTS;
        double value = coefficients[first + DEGREE];
        for (int k = DEGREE - 1; k >= 0; k--) {
            value = value * x + coefficients[first + k];
        }
        return value;
    }

    /**
     * Newton's step for y in y (1 + y f(y)) = target, f being this function: the left side less the target, by its slope.
     */
    double newtonStep(double y, double target) {
        double place = y * piecesPerUnit;
        int piece = Math.min((int) place, PIECES - 1);
        double x = 2.0 * (place - piece) - 1.0;
        int first = piece * POINTS;
        double value = coefficients[first + DEGREE];
        double slope = 0.0;
        for (int k = DEGREE - 1; k >= 0; k--) {
            slope = slope * x + value;
            value = value * x + coefficients[first + k];
        }
        double yf = y * value;
        return (y * (1.0 + yf) - target) / (1.0 + 2.0 * yf + y * y * 2.0 * piecesPerUnit * slope);
    }
}
