package org.toeline.assist;

/** Symmetric, positive definite matrices. */
final class Symmetric {

    private Symmetric() {
    }

    /** The inverse, by Cholesky; without rows when the matrix is not positive definite. */
    static double[][] inverse(double[][] m) {
        int n = m.length;
        double[][] l = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = m[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= l[i][k] * l[j][k];
                }
                if (i == j && !(sum > 0)) {
                    return new double[0][0];
                }
                l[i][j] = i == j ? Math.sqrt(sum) : sum / l[j][j];
            }
        }
        double[][] inverse = new double[n][n];
        for (int c = 0; c < n; c++) {
            double[] y = new double[n];
            for (int i = c; i < n; i++) {
                double sum = i == c ? 1 : 0;
                for (int k = c; k < i; k++) {
                    sum -= l[i][k] * y[k];
                }
                y[i] = sum / l[i][i];
            }
            for (int i = n - 1; i >= 0; i--) {
                double sum = y[i];
                for (int k = i + 1; k < n; k++) {
                    sum -= l[k][i] * inverse[k][c];
                }
                inverse[i][c] = sum / l[i][i];
            }
        }
        return inverse;
    }
}
