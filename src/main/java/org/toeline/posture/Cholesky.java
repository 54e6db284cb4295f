package org.toeline.posture;

/** The factor L of a symmetric positive definite matrix A = L·Lᵀ, in place of its lower triangle, row by row. */
final class Cholesky {

    private final int n;
    private final double[] l;

    private Cholesky(int n, double[] l) {
        this.n = n;
        this.l = l;
    }

    /** Overwrites {@code a}; null when it is not positive definite. */
    @org.jspecify.annotations.Nullable
    static Cholesky of(int n, double[] a) {
        for (int i = 0; i < n; i++) {
            int ri = i * n;
            for (int j = 0; j < i; j++) {
                int rj = j * n;
                double sum = a[ri + j];
                for (int k = 0; k < j; k++) {
                    sum -= a[ri + k] * a[rj + k];
                }
                a[ri + j] = sum / a[rj + j];
            }
            double sum = a[ri + i];
            for (int k = 0; k < i; k++) {
                sum -= a[ri + k] * a[ri + k];
            }
            if (!(sum > 0)) {
                return null;
            }
            a[ri + i] = Math.sqrt(sum);
        }
        return new Cholesky(n, a);
    }

    /** L⁻¹·b, in place. */
    void forward(double[] b) {
        for (int i = 0; i < n; i++) {
            double sum = b[i];
            int ri = i * n;
            for (int k = 0; k < i; k++) {
                sum -= l[ri + k] * b[k];
            }
            b[i] = sum / l[ri + i];
        }
    }

    /** L⁻ᵀ·b, in place. */
    void backward(double[] b) {
        for (int i = n - 1; i >= 0; i--) {
            int ri = i * n;
            double v = b[i] / l[ri + i];
            b[i] = v;
            for (int k = 0; k < i; k++) {
                b[k] -= l[ri + k] * v;
            }
        }
    }

    /** A⁻¹·b, in place. */
    void solve(double[] b) {
        forward(b);
        backward(b);
    }
}
