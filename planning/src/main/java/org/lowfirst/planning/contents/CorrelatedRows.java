package org.lowfirst.planning.contents;

/** Several measurements with correlated noise, made independent by a Cholesky factor and taken one after another. */
final class CorrelatedRows {

    private CorrelatedRows() {}

    /**
     * @param at indices of the unknowns the columns of {@code rows} belong to
     * @param rows factors, one row for each measurement
     * @param measured the values
     * @param noise covariance matrix of their noise, positive definite
     */
    static void correct(GaussianState state, int[] at, double[][] rows, double[] measured, double[][] noise) {
        double[][] lower = cholesky(noise);
        for (int r = 0; r < rows.length; r++) {
            double[] row = rows[r].clone();
            double value = measured[r];
            for (int k = 0; k < r; k++) {
                for (int c = 0; c < row.length; c++) {
                    row[c] -= lower[r][k] * rows[k][c];
                }
                value -= lower[r][k] * measured[k];
            }
            for (int c = 0; c < row.length; c++) {
                row[c] /= lower[r][r];
            }
            rows[r] = row;
            measured[r] = value / lower[r][r];
            state.correct(at, row, measured[r], 1.0);
        }
    }

    private static double[][] cholesky(double[][] matrix) {
        int n = matrix.length;
        double[][] lower = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= lower[i][k] * lower[j][k];
                }
                if (i == j && !(sum > 0.0)) {
                    throw new IllegalArgumentException("The noise (" + sum + ") must be positive definite.");
                }
                lower[i][j] = i == j ? Math.sqrt(sum) : sum / lower[j][j];
            }
        }
        return lower;
    }
}
