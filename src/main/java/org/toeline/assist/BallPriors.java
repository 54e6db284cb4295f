package org.toeline.assist;

/** What is believed of a ball's picture beforehand, as rows of {@link LeastSquares}: the blur, a smooth light, a ground. */
final class BallPriors {

    /** The blur expected, pixels (natural logarithm), a pixel's own square included, and its spread. */
    static final double USUAL_BLUR = Math.log(0.85);

    private static final double BLUR_SPREAD = 0.35;
    private static final double HELD_PX = 1e-3;
    /** Hardly anything. */
    private static final double LOOSE = 0.003;

    private final double[] held;
    private final BallModel model;
    private final double scale;
    private final double shapeWeight;

    /** @param onlyLight whether place, size and blur stay what they are */
    BallPriors(double[] now, BallModel model, boolean onlyLight) {
        this.held = now.clone();
        this.model = model;
        this.scale = Math.max(0.05, Math.abs(now[BallModel.SHAPE]));
        this.shapeWeight = onlyLight ? 1 / (HELD_PX * HELD_PX) : 0;
    }

    /** What each row should be is 0. */
    void add(double[] v, LeastSquares sums) {
        for (int j = 0; j < 3; j++) {
            sums.row(v[j] - held[j], shapeWeight, j);
        }
        sums.row(v[3] - USUAL_BLUR, 1 / (BLUR_SPREAD * BLUR_SPREAD), 3);
        for (int j = 0; j < BallModel.LIGHT; j++) {
            double spread = (j == 0 ? 100 : j <= 3 ? 0.5 : 0.15) * scale;
            sums.row(v[BallModel.SHAPE + j], 1 / (spread * spread), BallModel.SHAPE + j);
        }
        int ground = BallModel.SHAPE + BallModel.LIGHT;
        double smooth = 1 / (0.09 * scale * scale);
        for (int k = 0; k < model.sectors; k++) {
            int next = ground + (k + 1) % model.sectors;
            sums.row(v[next] - v[ground + k], smooth, next, ground + k);
        }
        sums.row(v[ground], LOOSE, ground);
        for (int j = model.cover(); j < model.values(); j++) {
            // where a cover slips off the picture nothing else says where it is
            sums.row(v[j] - held[j], LOOSE, j);
        }
    }
}
