package org.toeline.posture;

import java.util.List;

/** Least squares by the method of Levenberg and Marquardt (Marquardt 1963) with exact derivatives. */
final class Minimum {

    private static final int STEPS = 80;
    /** A step that is expected to lower the sum of squares by less than this ends the search. */
    private static final double FLAT = 1e-4;
    /** The same as a share of the sum: marks that do not belong together need no exact minimum. */
    private static final double FLAT_SHARE = 1e-6;

    private final List<Knowledge> knowledge;
    private final State state;
    private final NormalEquations equations;
    private double cost;
    private int steps;

    Minimum(List<Knowledge> knowledge, State start) {
        this.knowledge = knowledge;
        this.state = start;
        this.equations = new NormalEquations(start.x.length);
    }

    State state() {
        return state;
    }

    double cost() {
        return cost;
    }

    int steps() {
        return steps;
    }

    /** Sets every weight from where the state is now, with the sights softened by so many pixels, and goes downhill. */
    void descend(double softPx) {
        knowledge.forEach(k -> k.weigh(state, softPx));
        int n = state.x.length;
        double lambda = 1e-4;
        double[] best = state.x.clone();
        double[] step = new double[n];
        double[] damped = new double[n * n];
        gather();
        cost = equations.cost;
        for (int i = 0; i < STEPS; i++) {
            System.arraycopy(equations.matrix, 0, damped, 0, damped.length);
            for (int k = 0; k < n; k++) {
                damped[k * n + k] *= 1 + lambda;
                step[k] = -equations.gradient[k];
            }
            Cholesky factor = Cholesky.of(n, damped);
            if (factor == null) {
                lambda = Math.max(lambda, 1e-8) * 10;
                continue;
            }
            factor.solve(step);
            double expected = 0;
            for (int k = 0; k < n; k++) {
                expected -= equations.gradient[k] * step[k];
            }
            if (expected < Math.max(FLAT, FLAT_SHARE * cost)) {
                break;
            }
            for (int k = 0; k < n; k++) {
                step[k] += best[k];
            }
            state.moveTo(step);
            steps++;
            double there = costHere();
            if (there < cost) {
                best = state.x.clone();
                lambda = Math.max(lambda / 8, 1e-9);
                gather();
                cost = equations.cost;
            } else {
                lambda = Math.max(lambda * 6, 1e-6);
                if (lambda > 1e8) {
                    break;
                }
            }
        }
        state.moveTo(best);
    }

    private void gather() {
        equations.clear();
        for (Knowledge k : knowledge) {
            k.rows(state, equations);
        }
    }

    private double costHere() {
        double[] sum = {0};
        RowSink sink = (residual, count, index, slope) -> sum[0] += residual * residual;
        for (Knowledge k : knowledge) {
            k.rows(state, sink);
        }
        return sum[0];
    }
}
