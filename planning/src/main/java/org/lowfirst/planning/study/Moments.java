package org.lowfirst.planning.study;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Means and products of deviations of several quantities observed together, one observation at a time. Mutable, used by one
 * thread; two can be joined.
 *
 * @see "[Chan1983]"
 */
final class Moments {

    private static final double UPPER_OF_95 = 0.975;

    private final int size;
    private long count;
    private final double[] mean;
    private final double[] products;
    private final double[] before;

    Moments(int size) {
        this.size = size;
        mean = new double[size];
        products = new double[size * size];
        before = new double[size];
    }

    void add(double[] observed) {
        count++;
        for (int i = 0; i < size; i++) {
            before[i] = observed[i] - mean[i];
            mean[i] += before[i] / count;
        }
        for (int i = 0; i < size; i++) {
            double after = observed[i] - mean[i];
            for (int j = 0; j <= i; j++) {
                products[i * size + j] += after * before[j];
            }
        }
    }

    void add(Moments other) {
        if (other.count == 0) {
            return;
        }
        double all = count + other.count;
        double weight = count * (other.count / all);
        for (int i = 0; i < size; i++) {
            before[i] = other.mean[i] - mean[i];
        }
        for (int i = 0; i < size; i++) {
            mean[i] += before[i] * (other.count / all);
            for (int j = 0; j <= i; j++) {
                products[i * size + j] += other.products[i * size + j] + before[i] * before[j] * weight;
            }
        }
        count += other.count;
    }

    long count() {
        return count;
    }

    double mean(int i) {
        return mean[i];
    }

    private double covariance(int i, int j) {
        return (i >= j ? products[i * size + j] : products[j * size + i]) / (count - 1);
    }

    /** The mean of one quantity. */
    Estimate of(int i) {
        return interval(mean[i], covariance(i, i));
    }

    /** Sum of one quantity over the sum of another, by linear error propagation. */
    Estimate ratio(int over, int under) {
        double ratio = mean[over] / mean[under];
        double variance =
                covariance(over, over) - 2 * ratio * covariance(over, under) + ratio * ratio * covariance(under, under);
        return interval(ratio, variance / (mean[under] * mean[under]));
    }

    /** The first ratio less the second, the runs paired. */
    Estimate difference(int over, int under, int minusOver, int minusUnder) {
        int[] at = {over, under, minusOver, minusUnder};
        double first = mean[over] / mean[under];
        double second = mean[minusOver] / mean[minusUnder];
        double[] weight = {1 / mean[under], -first / mean[under], -1 / mean[minusUnder], second / mean[minusUnder]};
        double variance = 0.0;
        for (int i = 0; i < at.length; i++) {
            for (int j = 0; j < at.length; j++) {
                variance += weight[i] * weight[j] * covariance(at[i], at[j]);
            }
        }
        return interval(first - second, variance);
    }

    private Estimate interval(double middle, double variance) {
        double reach = new TDistribution(count - 1.0).inverseCumulativeProbability(UPPER_OF_95)
                * Math.sqrt(Math.max(0.0, variance) / count);
        return new Estimate(middle, middle - reach, middle + reach);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Moments m
                && count == m.count
                && Arrays.equals(mean, m.mean)
                && Arrays.equals(products, m.products);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(mean);
    }
}
