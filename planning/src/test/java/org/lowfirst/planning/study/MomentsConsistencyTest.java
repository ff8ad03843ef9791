package org.lowfirst.planning.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.stat.correlation.Covariance;
import org.junit.jupiter.api.Test;
import org.lowfirst.planning.study.kernel.Draws;

/** Streaming moments against the covariances of a general-purpose statistics library (Hipparchus). */
final class MomentsConsistencyTest {

    private static final int SIZE = 4;

    private static double[][] observed() {
        Draws draws = new Draws(1, 1);
        double[][] all = new double[500][SIZE];
        for (double[] one : all) {
            double common = draws.normal();
            for (int i = 0; i < SIZE; i++) {
                one[i] = 1e3 * (i + 1) + common * (i + 1) + draws.normal();
            }
        }
        return all;
    }

    @Test
    void oneByOneAndInPartsAreTheLibrarysCovariances() {
        double[][] all = observed();
        Moments whole = new Moments(SIZE);
        Moments parts = new Moments(SIZE);
        Moments part = new Moments(SIZE);
        for (int i = 0; i < all.length; i++) {
            whole.add(all[i]);
            part.add(all[i]);
            if (i % 77 == 0) {
                parts.add(part);
                part = new Moments(SIZE);
            }
        }
        parts.add(part);
        double[][] covariance = new Covariance(all).getCovarianceMatrix().getData();
        for (Moments moments : new Moments[] {whole, parts}) {
            assertThat(moments.count()).isEqualTo(500);
            double ratio = moments.mean(1) / moments.mean(0);
            double variance = (covariance[1][1] - 2 * ratio * covariance[1][0] + ratio * ratio * covariance[0][0])
                    / (moments.mean(0) * moments.mean(0));
            // Student's t, 499 degrees of freedom, two-sided 95 %: 1.9647 (tables, from memory)
            double half = 1.9647 * Math.sqrt(variance / 500);
            Estimate estimate = moments.ratio(1, 0);
            assertThat(estimate.mean()).isEqualTo(ratio);
            assertThat(estimate.high() - ratio).isEqualTo(half, within(1e-4 * half));
            Estimate mean = moments.of(2);
            assertThat(mean.high() - mean.mean()).isEqualTo(1.9647 * Math.sqrt(covariance[2][2] / 500), within(1e-4));
            Estimate none = moments.difference(1, 0, 1, 0);
            assertThat(none.mean()).isZero();
            assertThat(none.high()).isEqualTo(0.0, within(1e-9));
        }
    }
}
