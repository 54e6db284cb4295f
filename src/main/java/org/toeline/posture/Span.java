package org.toeline.posture;

/** The usual distance between two landmarks: one row. */
final class Span implements Knowledge {

    private final double mean;
    private final double sigma;
    private final int[] index = new int[6];
    private final double[] slope = new double[6];

    Span(int from, int to, double meanM, double sigmaM) {
        this.mean = meanM;
        this.sigma = sigmaM;
        for (int i = 0; i < 3; i++) {
            index[i] = from + i;
            index[3 + i] = to + i;
        }
    }

    @Override
    public Source source() {
        return Source.BODY;
    }

    @Override
    public void rows(State state, RowSink sink) {
        double squares = 0;
        for (int i = 0; i < 3; i++) {
            double d = state.x[index[3 + i]] - state.x[index[i]];
            slope[3 + i] = d;
            squares += d * d;
        }
        double length = Math.max(Math.sqrt(squares), 1e-6);
        for (int i = 0; i < 3; i++) {
            slope[3 + i] /= length * sigma;
            slope[i] = -slope[3 + i];
        }
        sink.row((length - mean) / sigma, 6, index, slope);
    }
}
