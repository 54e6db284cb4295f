package org.toeline.posture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.differentiation.Gradient;
import org.junit.jupiter.api.Test;

/**
 * The law of propagation with correlated inputs, as the estimator does it (factor of the information matrix, triangular
 * solves, gradients by automatic differentiation), on JCGM 100:2008 example H.2: simultaneous resistance and reactance.
 * Observations quoted from the standard; results as it states them, to its digits.
 */
class PropagationReferenceTest {

    private static final double[] V = {5.007, 4.994, 5.005, 4.990, 4.999};
    private static final double[] I = {0.019663, 0.019639, 0.019640, 0.019685, 0.019678};
    private static final double[] PHI = {1.0456, 1.0438, 1.0468, 1.0428, 1.0433};

    private final double[] mean = new double[3];
    private final double[][] covariance = new double[3][3];
    private final Cholesky information;

    PropagationReferenceTest() {
        double[][] data = {V, I, PHI};
        for (int a = 0; a < 3; a++) {
            for (double v : data[a]) {
                mean[a] += v / 5;
            }
        }
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                for (int k = 0; k < 5; k++) {
                    covariance[a][b] += (data[a][k] - mean[a]) * (data[b][k] - mean[b]) / 20;
                }
            }
        }
        this.information = Cholesky.of(3, inverse(covariance));
    }

    /** Lower triangle of the inverse, column by column through a factor of the covariance. */
    private static double[] inverse(double[][] c) {
        Cholesky factor = Cholesky.of(3, new double[] {c[0][0], 0, 0, c[1][0], c[1][1], 0, c[2][0], c[2][1], c[2][2]});
        double[] inverse = new double[9];
        for (int j = 0; j < 3; j++) {
            double[] column = new double[3];
            column[j] = 1;
            factor.solve(column);
            for (int i = 0; i < 3; i++) {
                inverse[3 * i + j] = column[i];
            }
        }
        return inverse;
    }

    private Gradient variable(int at) {
        return Gradient.variable(3, at, mean[at]);
    }

    private double covariance(Gradient a, Gradient b) {
        double[] ga = a.getGradient();
        double[] gb = b.getGradient();
        information.forward(ga);
        information.forward(gb);
        return ga[0] * gb[0] + ga[1] * gb[1] + ga[2] * gb[2];
    }

    private double correlation(Gradient a, Gradient b) {
        return covariance(a, b) / Math.sqrt(covariance(a, a) * covariance(b, b));
    }

    @Test
    void inputs() {
        assertThat(mean[0]).isCloseTo(4.9990, within(5e-5));
        assertThat(mean[1]).isCloseTo(0.019661, within(5e-7));
        assertThat(mean[2]).isCloseTo(1.04446, within(5e-6));
        assertThat(correlation(variable(0), variable(1))).isCloseTo(-0.3553, within(5e-5));
        assertThat(correlation(variable(0), variable(2))).isCloseTo(0.8576, within(5e-5));
        assertThat(correlation(variable(1), variable(2))).isCloseTo(-0.6451, within(5e-5));
    }

    @Test
    void resistanceReactanceImpedance() {
        Gradient z = variable(0).divide(variable(1));
        Gradient r = z.multiply(variable(2).cos());
        Gradient x = z.multiply(variable(2).sin());
        assertThat(r.getValue()).isCloseTo(127.73217, within(5e-6));
        assertThat(x.getValue()).isCloseTo(219.84651, within(5e-6));
        assertThat(z.getValue()).isCloseTo(254.25970, within(5e-6));
        assertThat(Math.sqrt(covariance(r, r))).isCloseTo(0.07107, within(5e-6));
        assertThat(Math.sqrt(covariance(x, x))).isCloseTo(0.29558, within(5e-6));
        assertThat(Math.sqrt(covariance(z, z))).isCloseTo(0.23634, within(5e-6));
        assertThat(correlation(r, x)).isCloseTo(-0.5884, within(5e-5));
        assertThat(correlation(r, z)).isCloseTo(-0.4853, within(5e-5));
        assertThat(correlation(x, z)).isCloseTo(0.9925, within(5e-5));
    }
}
