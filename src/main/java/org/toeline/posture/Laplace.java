package org.toeline.posture;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The uncertainty of a fit by the curvature of its sum of squares at the minimum: covariance (JᵀJ)⁻¹. A row's share in
 * the variance gᵀ(JᵀJ)⁻¹g is (row · (JᵀJ)⁻¹g)²; the shares of all rows add up to it.
 */
final class Laplace implements Uncertainty {

    private final Cholesky factor;
    private final Unknowns unknowns;
    private final List<Row> rows = new ArrayList<>();

    private record Row(Source source, int[] index, double[] slope) {}

    Laplace(List<Knowledge> knowledge, State state, Unknowns unknowns) {
        this.unknowns = unknowns;
        int n = state.x.length;
        NormalEquations equations = new NormalEquations(n);
        for (Knowledge k : knowledge) {
            k.rows(state, (residual, count, index, slope) -> {
                equations.row(residual, count, index, slope);
                rows.add(new Row(
                        k.source(), java.util.Arrays.copyOf(index, count), java.util.Arrays.copyOf(slope, count)));
            });
        }
        Cholesky cholesky = Cholesky.of(n, equations.matrix);
        if (cholesky == null) {
            throw new IllegalStateException("every unknown has a prior, so its curvature must be positive");
        }
        this.factor = cholesky;
    }

    Cholesky factor() {
        return factor;
    }

    /** A gradient by coordinates as a gradient by unknowns: coordinates are measured from the ground under the ball. */
    private double[] byUnknowns(double[] g) {
        double[] out = new double[unknowns.size()];
        int at = 0;
        int ball = unknowns.ball();
        for (var landmark : unknowns.landmarks()) {
            int to = unknowns.landmark(landmark);
            for (int i = 0; i < 3; i++) {
                out[to + i] += g[at + i];
            }
            out[ball] -= g[at];
            out[ball + 1] -= g[at + 1];
            at += 3;
        }
        out[ball + Unknowns.BALL_UNDERSIDE] += g[at + 2];
        out[ball + Unknowns.BALL_DIAMETER] += g[at + 2] / 2 + g[at + 3];
        return out;
    }

    @Override
    public double variance(double[] gradient) {
        double[] g = byUnknowns(gradient);
        factor.forward(g);
        return squares(g);
    }

    /** The standard deviation of one unknown. */
    double sigma(int unknown) {
        double[] g = new double[unknowns.size()];
        g[unknown] = 1;
        factor.forward(g);
        return Math.sqrt(squares(g));
    }

    private static double squares(double[] g) {
        double sum = 0;
        for (double v : g) {
            sum += v * v;
        }
        return sum;
    }

    @Override
    public Map<Source, Double> shares(double[] gradient) {
        double[] g = byUnknowns(gradient);
        factor.solve(g);
        Map<Source, Double> shares = new EnumMap<>(Source.class);
        for (Row row : rows) {
            double along = 0;
            for (int i = 0; i < row.index.length; i++) {
                along += row.slope[i] * g[row.index[i]];
            }
            shares.merge(row.source, along * along, Double::sum);
        }
        return shares;
    }
}
