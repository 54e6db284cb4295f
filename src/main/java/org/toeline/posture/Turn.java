package org.toeline.posture;

/** The usual angle, seen from above, from one line between landmarks to another; radians, positive open. One row. */
final class Turn implements Knowledge {

    private final double mean;
    private final double sigma;
    private final int[] index = new int[8];
    private final double[] slope = new double[8];

    /** From the line {@code fromA → toA} to the line {@code fromB → toB}, each given by where its landmarks stand. */
    Turn(int fromA, int toA, int fromB, int toB, double meanRad, double sigmaRad) {
        this.mean = meanRad;
        this.sigma = sigmaRad;
        int[] bases = {fromA, toA, fromB, toB};
        for (int i = 0; i < 4; i++) {
            index[2 * i] = bases[i];
            index[2 * i + 1] = bases[i] + 1;
        }
    }

    @Override
    public Source source() {
        return Source.BODY;
    }

    @Override
    public void rows(State state, RowSink sink) {
        double a = heading(state.x, 0, -1);
        double b = heading(state.x, 4, 1);
        sink.row(Math.IEEEremainder(b - a - mean, 2 * Math.PI) / sigma, 8, index, slope);
    }

    private double heading(double[] x, int at, int sign) {
        double t = x[index[at + 2]] - x[index[at]];
        double h = x[index[at + 3]] - x[index[at + 1]];
        double squares = Math.max(t * t + h * h, 1e-6) * sigma * sign;
        slope[at] = h / squares;
        slope[at + 1] = -t / squares;
        slope[at + 2] = -h / squares;
        slope[at + 3] = t / squares;
        return Math.atan2(h, t);
    }
}
