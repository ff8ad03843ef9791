package org.lowfirst.planning.contents;

import java.util.Arrays;

/**
 * Means and covariances of a growing set of unknowns, corrected one scalar measurement at a time. Mutable, confined to its
 * owner. The covariance matrix is kept symmetric by writing both halves alike.
 */
final class GaussianState {

    private double[] mean = new double[16];
    private double[][] covariance = new double[16][16];
    private int size;

    /** Adds an unknown that has nothing to do with the others. */
    int add(double mean0, double variance) {
        if (size == mean.length) {
            grow();
        }
        mean[size] = mean0;
        covariance[size][size] = variance;
        return size++;
    }

    private void grow() {
        int room = 2 * size;
        mean = Arrays.copyOf(mean, room);
        double[][] larger = new double[room][];
        for (int i = 0; i < room; i++) {
            larger[i] = i < size ? Arrays.copyOf(covariance[i], room) : new double[room];
        }
        covariance = larger;
    }

    int size() {
        return size;
    }

    double mean(int i) {
        return mean[i];
    }

    double variance(int i) {
        return covariance[i][i];
    }

    double covariance(int i, int j) {
        return covariance[i][j];
    }

    void widen(int i, double variance) {
        covariance[i][i] += variance;
    }

    /** Makes unknown i equal to {@code constant + factor (unknown j) + noise}. */
    void replaceBy(int i, double constant, int j, double factor, double variance) {
        mean[i] = constant + factor * mean[j];
        for (int k = 0; k < size; k++) {
            double with = factor * covariance[j][k];
            covariance[i][k] = with;
            covariance[k][i] = with;
        }
        covariance[i][i] = factor * factor * covariance[j][j] + variance;
    }

    /** Takes an uncertain amount from one unknown and gives it to another. */
    void move(int from, int to, double amount, double variance) {
        mean[from] -= amount;
        mean[to] += amount;
        covariance[from][from] += variance;
        covariance[to][to] += variance;
        covariance[from][to] -= variance;
        covariance[to][from] -= variance;
    }

    double forecast(int[] at, double[] by) {
        double sum = 0.0;
        for (int k = 0; k < at.length; k++) {
            sum += by[k] * mean[at[k]];
        }
        return sum;
    }

    /** How many standard deviations a measurement is off its forecast. */
    double surprise(int[] at, double[] by, double measured, double noise) {
        double[] with = covarianceWith(at, by);
        return (measured - forecast(at, by)) / Math.sqrt(varianceOf(at, by, with) + noise);
    }

    /**
     * Corrects all unknowns by one measurement of {@code sum by[k] unknown[at[k]] + noise}.
     *
     * @param at indices of the unknowns measured
     * @param by their factors
     * @param measured the value
     * @param noise variance of its noise
     */
    void correct(int[] at, double[] by, double measured, double noise) {
        double[] with = covarianceWith(at, by);
        double S = varianceOf(at, by, with) + noise;
        double nu = measured - forecast(at, by);
        for (int i = 0; i < size; i++) {
            double gain = with[i] / S;
            if (gain == 0.0) {
                continue;
            }
            mean[i] += gain * nu;
            double[] row = covariance[i];
            for (int j = 0; j < size; j++) {
                row[j] -= gain * with[j];
            }
        }
    }

    private double[] covarianceWith(int[] at, double[] by) {
        double[] with = new double[size];
        for (int k = 0; k < at.length; k++) {
            double[] row = covariance[at[k]];
            for (int i = 0; i < size; i++) {
                with[i] += by[k] * row[i];
            }
        }
        return with;
    }

    private static double varianceOf(int[] at, double[] by, double[] with) {
        double sum = 0.0;
        for (int k = 0; k < at.length; k++) {
            sum += by[k] * with[at[k]];
        }
        return sum;
    }
}
