package org.toeline.posture;

import org.toeline.mark.Landmark;

/**
 * Two points of a body that keep their distance, whatever the player does: one row, (e⁻ᶻ·|P − Q| − mean) over the
 * standard deviation, with z the logarithm of the player's size.
 */
final class Bone implements Knowledge {

    /** Two points nearer than this have no direction, metres. */
    private static final double NEAREST_M = 1e-3;

    private final int from;
    private final int to;
    private final int size;
    private final double meanM;
    private final double sigmaM;
    private final int[] index = new int[7];
    private final double[] slope = new double[7];

    Bone(Unknowns unknowns, Landmark from, Landmark to, double meanM, double sigmaM) {
        this.from = unknowns.landmark(from);
        this.to = unknowns.landmark(to);
        this.size = unknowns.playerSize();
        this.meanM = meanM;
        this.sigmaM = sigmaM;
    }

    @Override
    public Source source() {
        return Source.BODY;
    }

    @Override
    public void rows(State state, RowSink sink) {
        double[] x = state.x;
        double square = 0;
        for (int i = 0; i < 3; i++) {
            double d = x[to + i] - x[from + i];
            square += d * d;
        }
        double length = Math.max(NEAREST_M, Math.sqrt(square));
        double shrink = Math.exp(-x[size]) / sigmaM;
        for (int i = 0; i < 3; i++) {
            double by = shrink * (x[to + i] - x[from + i]) / length;
            index[i] = to + i;
            slope[i] = by;
            index[3 + i] = from + i;
            slope[3 + i] = -by;
        }
        index[6] = size;
        slope[6] = -shrink * length;
        sink.row(shrink * length - meanM / sigmaM, 7, index, slope);
    }
}
