package org.toeline.posture;

import java.util.Arrays;

/** Gathers rows into the normal equations JᵀJ and Jᵀr, lower triangle, row by row. */
final class NormalEquations implements RowSink {

    final int n;
    final double[] matrix;
    final double[] gradient;
    double cost;

    NormalEquations(int n) {
        this.n = n;
        this.matrix = new double[n * n];
        this.gradient = new double[n];
    }

    void clear() {
        Arrays.fill(matrix, 0);
        Arrays.fill(gradient, 0);
        cost = 0;
    }

    @Override
    public void row(double residual, int count, int[] index, double[] slope) {
        cost += residual * residual;
        for (int a = 0; a < count; a++) {
            double s = slope[a];
            int i = index[a];
            gradient[i] += s * residual;
            int base = i * n;
            for (int b = 0; b < count; b++) {
                if (index[b] <= i) {
                    matrix[base + index[b]] += s * slope[b];
                }
            }
        }
    }
}
