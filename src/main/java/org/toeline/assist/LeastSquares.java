package org.toeline.assist;

import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * Goes downhill on a sum of squares after Levenberg and Marquardt. Each row names the few values it depends on, and only their
 * products are added up: with forty values and eighteen in a row that is some ten times quicker than the solvers of the
 * libraries, which work on full rows.
 */
final class LeastSquares {

    /** All rows at some values. */
    interface Rows {
        void add(double[] values, LeastSquares sums);
    }

    private static final int TRIES = 6;
    private static final double SMALL = 1e-3;

    final int values;
    private final double[][] normal;
    private final double[] right;
    private double squares;

    private LeastSquares(int values) {
        this.values = values;
        normal = new double[values][values];
        right = new double[values];
    }

    /**
     * One row.
     *
     * @param off   what is left unexplained
     * @param rates change of what is explained with each value
     * @param which the first {@code n} are the values it depends on
     */
    void row(double off, double weight, double[] rates, int[] which, int n) {
        squares += weight * off * off;
        for (int i = 0; i < n; i++) {
            int a = which[i];
            double rate = weight * rates[a];
            right[a] += rate * off;
            double[] line = normal[a];
            for (int j = 0; j < n; j++) {
                line[which[j]] += rate * rates[which[j]];
            }
        }
    }

    /** A row that depends on one value only. */
    void row(double off, double weight, int which) {
        squares += weight * off * off;
        right[which] -= weight * off;
        normal[which][which] += weight;
    }

    /** A row on the difference of two values. */
    void row(double off, double weight, int plus, int minus) {
        row(off, weight, plus);
        squares -= weight * off * off;
        row(-off, weight, minus);
        normal[plus][minus] -= weight;
        normal[minus][plus] -= weight;
    }

    static LeastSquares at(double[] values, Rows rows) {
        LeastSquares sums = new LeastSquares(values.length);
        rows.add(values, sums);
        return sums;
    }

    /** Steps down as long as it pays, so many times at most; the values it comes to. */
    static double[] down(double[] from, Rows rows, int most) {
        double[] at = from;
        LeastSquares here = at(at, rows);
        double damping = 1e-3;
        for (int k = 0; k < most; k++) {
            double[] step = new double[0];
            LeastSquares there = here;
            for (int i = 0; i < TRIES && step.length == 0; i++) {
                double[] next = plus(at, here.step(damping));
                there = at(next, rows);
                if (there.squares < here.squares) {
                    step = next;
                    damping /= 6;
                } else {
                    damping *= 8;
                }
            }
            if (step.length == 0) {
                return at;
            }
            at = step;
            boolean done = here.squares - there.squares < SMALL * (1 + 0.01 * here.squares);
            here = there;
            if (done) {
                return at;
            }
        }
        return at;
    }

    private static double[] plus(double[] a, double[] b) {
        double[] sum = a.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += b[i];
        }
        return sum;
    }

    /** @throws MathRuntimeException when the rows do not say what the values are */
    private double[] step(double damping) {
        double[][] damped = new double[values][];
        for (int i = 0; i < values; i++) {
            damped[i] = normal[i].clone();
            damped[i][i] *= 1 + damping;
        }
        return decomposed(damped)
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
    }

    /** The covariance of the values, for rows weighted by one over their variance. */
    RealMatrix covariance() {
        return decomposed(normal).getSolver().getInverse();
    }

    /** The two halves were added up in different orders and may differ in the last digits. */
    private static CholeskyDecomposition decomposed(double[][] matrix) {
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j < i; j++) {
                matrix[i][j] = matrix[j][i];
            }
        }
        return new CholeskyDecomposition(new Array2DRowRealMatrix(matrix, false), 1e-6, 1e-14);
    }
}
