package org.toeline.posture;

import java.util.List;
import org.toeline.mark.Landmark;

/** How people usually stand, as knowledge of the landmarks marked: the {@link Population}, whitened, a row a time. */
final class BodyHabits implements Knowledge {

    private final double[] mean;
    private final int[] index;
    private final double[][] slopes;
    private final int ball;
    private final int[] along;
    private final double[] slope;

    BodyHabits(Unknowns unknowns, Population population) {
        List<Landmark> landmarks = unknowns.landmarks();
        int n = 3 * landmarks.size();
        this.ball = unknowns.ball();
        this.mean = new double[n];
        this.index = new int[n];
        this.slopes = whitening(n, population.covariance(landmarks));
        for (int i = 0; i < n; i++) {
            mean[i] = population.mean(landmarks.get(i / 3), i % 3);
            index[i] = unknowns.landmark(landmarks.get(i / 3)) + i % 3;
        }
        this.along = java.util.Arrays.copyOf(index, n + 2);
        this.slope = new double[n + 2];
    }

    /** The inverse of the covariance's factor, row by row. */
    private static double[][] whitening(int n, double[] covariance) {
        Cholesky factor = Cholesky.of(n, covariance);
        if (factor == null) {
            throw new IllegalStateException("the population varies in every coordinate, so its covariance has a factor");
        }
        double[][] rows = new double[n][];
        for (int i = 0; i < n; i++) {
            rows[i] = new double[i + 1];
        }
        double[] column = new double[n];
        for (int j = 0; j < n; j++) {
            java.util.Arrays.fill(column, 0);
            column[j] = 1;
            factor.forward(column);
            for (int i = j; i < n; i++) {
                rows[i][j] = column[i];
            }
        }
        return rows;
    }

    static void start(Unknowns unknowns, Population population, double[] x) {
        for (Landmark landmark : unknowns.landmarks()) {
            int at = unknowns.landmark(landmark);
            x[at] = x[unknowns.ball()] + population.mean(landmark, 0);
            x[at + 1] = x[unknowns.ball() + 1] + population.mean(landmark, 1);
            x[at + 2] = population.mean(landmark, 2);
        }
    }

    @Override
    public Source source() {
        return Source.BODY;
    }

    @Override
    public void rows(State state, RowSink sink) {
        double[] x = state.x;
        for (int i = 0; i < slopes.length; i++) {
            double residual = 0;
            double byT = 0;
            double byH = 0;
            for (int j = 0; j <= i; j++) {
                double s = slopes[i][j];
                double value = x[index[j]] - mean[j];
                if (j % 3 == 0) {
                    value -= x[ball];
                    byT -= s;
                } else if (j % 3 == 1) {
                    value -= x[ball + 1];
                    byH -= s;
                }
                residual += s * value;
                slope[j] = s;
                along[j] = index[j];
            }
            along[i + 1] = ball;
            slope[i + 1] = byT;
            along[i + 2] = ball + 1;
            slope[i + 2] = byH;
            sink.row(residual, i + 3, along, slope);
        }
    }
}
