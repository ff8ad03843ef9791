package org.lowfirst.planning.contents;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.filtering.kalman.Measurement;
import org.hipparchus.filtering.kalman.ProcessEstimate;
import org.hipparchus.filtering.kalman.linear.LinearEvolution;
import org.hipparchus.filtering.kalman.linear.LinearKalmanFilter;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposer;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

/**
 * The filter's sparse scalar corrections, moves and correlated rows against the dense linear Kalman filter of Hipparchus 4.0.3
 * (independent code) on random sequences of moves, losses and readings.
 */
class FilterAgainstHipparchusReferenceTest {

    private static final int UNKNOWNS = 5;
    private static final double[] PRIOR = {300.0, 200.0, 20.0, 0.0, 0.0};
    private static final double[] PRIOR_VARIANCE = {9.0, 16.0, 4.0, 25.0, 30.0};

    /** One step as Hipparchus wants it. */
    private record Observed(
            double time, RealVector value, RealMatrix factors, RealMatrix noise, RealMatrix process, RealVector control)
            implements Measurement {
        @Override
        public double getTime() {
            return time;
        }

        @Override
        public RealVector getValue() {
            return value;
        }

        @Override
        public RealMatrix getCovariance() {
            return noise;
        }
    }

    @Test
    void meansAndCovariancesAgreeAfterFortySteps() {
        Random chance = new Random(20260302);
        GaussianState ours = new GaussianState();
        for (int i = 0; i < UNKNOWNS; i++) {
            ours.add(PRIOR[i], PRIOR_VARIANCE[i]);
        }
        List<Observed> steps =
                IntStream.range(0, 40).mapToObj(k -> step(k, chance, ours)).toList();
        ProcessEstimate theirs = dense(steps);
        for (int i = 0; i < UNKNOWNS; i++) {
            assertThat(ours.mean(i)).isCloseTo(theirs.getState().getEntry(i), within(1e-9));
            for (int j = 0; j < UNKNOWNS; j++) {
                assertThat(ours.covariance(i, j))
                        .isCloseTo(theirs.getCovariance().getEntry(i, j), within(1e-9));
            }
        }
    }

    /** A move from 0 or 1 to 2, a little widening, then two readings with correlated noise; both ways. */
    private static Observed step(int k, Random chance, GaussianState ours) {
        int from = chance.nextInt(2);
        double moved = 3.0 * chance.nextDouble();
        double movedVariance = 0.5 + chance.nextDouble();
        ours.move(from, 2, moved, movedVariance);
        RealVector control = new ArrayRealVector(UNKNOWNS);
        control.setEntry(from, -moved);
        control.setEntry(2, moved);
        RealVector direction = new ArrayRealVector(UNKNOWNS);
        direction.setEntry(from, -1.0);
        direction.setEntry(2, 1.0);
        RealMatrix process = direction.outerProduct(direction).scalarMultiply(movedVariance);
        ours.widen(from, 0.01);
        process.addToEntry(from, from, 0.01);

        int[] at = {from, 2, 3, 4};
        double[][] rows = {{1.0, 0.0, 0.8, 0.0}, {0.0, 1.0, 0.0, 0.3}, {0.0, 0.0, -1.0, 1.0}};
        double[][] noise = {{2.0, 0.0, -0.4}, {0.0, 1.0, 0.2}, {-0.4, 0.2, 1.5}};
        double[] values = {300 + 5 * chance.nextGaussian(), 25 + 3 * chance.nextGaussian(), 2 * chance.nextGaussian()};
        RealMatrix factors = new Array2DRowRealMatrix(3, UNKNOWNS);
        for (int r = 0; r < 3; r++) {
            for (int c = 0; c < 4; c++) {
                factors.setEntry(r, at[c], rows[r][c]);
            }
        }
        Observed observed = new Observed(
                k, new ArrayRealVector(values), factors, new Array2DRowRealMatrix(noise), process, control);
        CorrelatedRows.correct(ours, at, rows.clone(), values.clone(), noise);
        return observed;
    }

    private static ProcessEstimate dense(List<Observed> steps) {
        LinearKalmanFilter<Observed> filter = new LinearKalmanFilter<>(
                new QRDecomposer(1e-15),
                o -> new LinearEvolution(
                        MatrixUtils.createRealIdentityMatrix(UNKNOWNS),
                        MatrixUtils.createRealIdentityMatrix(UNKNOWNS),
                        o.control(),
                        o.process(),
                        o.factors()),
                new ProcessEstimate(
                        -1.0, new ArrayRealVector(PRIOR), MatrixUtils.createRealDiagonalMatrix(PRIOR_VARIANCE)));
        ProcessEstimate last = null;
        for (Observed step : steps) {
            last = filter.estimationStep(step);
        }
        return Objects.requireNonNull(last);
    }
}
