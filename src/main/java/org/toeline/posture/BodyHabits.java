package org.toeline.posture;

import java.util.List;
import org.toeline.mark.Landmark;

/**
 * How people usually stand, as knowledge of the landmarks marked: the {@link Population}, whitened, a row a time. With z
 * the logarithm of the player's size, W the whitening and X̄ the mean shape, a row is Wᵢ·(e⁻ᶻ(X − ball) − X̄), where e⁻ᶻ
 * is left out for what does not grow with the player.
 */
final class BodyHabits implements Knowledge {

    private final double[] mean;
    private final int[] index;
    private final double[][] slopes;
    private final boolean[] grows;
    private final double[] value;
    private final int ball;
    private final int playerSize;
    private final int[] along;
    private final double[] slope;

    /** @param loosened how many times wider the habits are taken than they are */
    BodyHabits(Unknowns unknowns, Population population, double loosened) {
        List<Landmark> landmarks = unknowns.landmarks();
        int n = 3 * landmarks.size();
        this.ball = unknowns.ball();
        this.playerSize = unknowns.playerSize();
        this.grows = new boolean[n];
        this.value = new double[n];
        this.mean = new double[n];
        this.index = new int[n];
        this.slopes = whitening(n, population.covariance(landmarks));
        for (int i = 0; i < n; i++) {
            mean[i] = population.mean(landmarks.get(i / 3), i % 3);
            grows[i] = Population.grows(landmarks.get(i / 3));
            index[i] = unknowns.landmark(landmarks.get(i / 3)) + i % 3;
            for (int j = 0; j <= i; j++) {
                slopes[i][j] /= loosened;
            }
        }
        this.along = java.util.Arrays.copyOf(index, n + 3);
        this.slope = new double[n + 3];
    }

    /** The inverse of the covariance's factor, row by row. */
    private static double[][] whitening(int n, double[] covariance) {
        Cholesky factor = Cholesky.of(n, covariance);
        if (factor == null) {
            throw new IllegalStateException(
                    "the population varies in every coordinate, so its covariance has a factor");
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
        x[unknowns.playerSize()] = 0;
    }

    @Override
    public Source source() {
        return Source.BODY;
    }

    @Override
    public void rows(State state, RowSink sink) {
        double[] x = state.x;
        double shrink = Math.exp(-x[playerSize]);
        for (int j = 0; j < value.length; j++) {
            double fromBall = j % 3 == 2 ? x[index[j]] : x[index[j]] - x[ball + j % 3];
            value[j] = grows[j] ? shrink * fromBall : fromBall;
        }
        for (int i = 0; i < slopes.length; i++) {
            row(i, shrink, sink);
        }
    }

    private void row(int i, double shrink, RowSink sink) {
        double residual = 0;
        double byT = 0;
        double byH = 0;
        double bySize = 0;
        for (int j = 0; j <= i; j++) {
            double w = slopes[i][j];
            residual += w * (value[j] - mean[j]);
            double s = w;
            if (grows[j]) {
                s *= shrink;
                bySize -= w * value[j];
            }
            slope[j] = s;
            along[j] = index[j];
            if (j % 3 == 0) {
                byT -= s;
            } else if (j % 3 == 1) {
                byH -= s;
            }
        }
        along[i + 1] = ball;
        slope[i + 1] = byT;
        along[i + 2] = ball + 1;
        slope[i + 2] = byH;
        along[i + 3] = playerSize;
        slope[i + 3] = bySize;
        sink.row(residual, i + 4, along, slope);
    }
}
