package org.toeline.assist;

import org.hipparchus.linear.RealMatrix;
import org.toeline.assist.BallPatch.Pixel;

/**
 * How far a fitted ball may be off. The covariance of a least-squares fit takes neighbouring pixels for independent; after
 * coding, and on a textured ground, they err alike. So the errors that are there are added up with their neighbours' (the
 * estimator of Conley, J. Econometrics 92:1, 1999, with triangular weights), and the larger of the two is stated.
 */
final class BallSpread {

    /** Pixels farther apart than this, across or down, err each for itself. */
    private static final int ALIKE_PX = 3;

    private final BallPatch patch;
    private final BallModel model;
    private final RealMatrix covariance;
    private final double[] weight;
    private final double[] misfit;

    /**
     * @param covariance of the model's values as if pixels were independent
     * @param weight     of each pixel of the patch
     * @param misfit     of each pixel of the patch, grey levels
     */
    BallSpread(BallPatch patch, BallModel model, RealMatrix covariance, double[] weight, double[] misfit) {
        this.patch = patch;
        this.model = model;
        this.covariance = covariance;
        this.weight = weight;
        this.misfit = misfit;
    }

    /** Standard deviation of the centre (the larger of the two directions) and of the radius, pixels. */
    double[] sigmas() {
        double[] rates = new double[model.values()];
        int[] which = model.which();
        double[][] pull = new double[weight.length][];
        int used = 0;
        for (int i = 0; i < weight.length; i++) {
            if (weight[i] > 0) {
                Pixel p = patch.pixels.get(i);
                model.level(p.middleX(), p.middleY(), rates);
                pull[i] = new double[3];
                for (int j : which) {
                    for (int k = 0; k < 3; k++) {
                        pull[i][k] += covariance.getEntry(k, j) * rates[j] * weight[i] * misfit[i];
                    }
                }
                used++;
            }
        }
        double own = (double) used / Math.max(1, used - model.values());
        double[] alike = alike(pull);
        double[] sigma = new double[3];
        for (int k = 0; k < 3; k++) {
            sigma[k] = Math.sqrt(Math.max(covariance.getEntry(k, k), own * alike[k]));
        }
        return new double[] {Math.max(sigma[0], sigma[1]), sigma[2]};
    }

    private double[] alike(double[][] pull) {
        double[] sum = new double[3];
        for (int i = 0; i < pull.length; i++) {
            if (pull[i] == null) {
                continue;
            }
            Pixel p = patch.pixels.get(i);
            for (int dy = 1 - ALIKE_PX; dy < ALIKE_PX; dy++) {
                for (int dx = 1 - ALIKE_PX; dx < ALIKE_PX; dx++) {
                    int j = patch.neighbour(p, dx, dy);
                    if (j >= 0 && pull[j] != null) {
                        double share = (1 - Math.abs(dx) / (double) ALIKE_PX) * (1 - Math.abs(dy) / (double) ALIKE_PX);
                        for (int k = 0; k < 3; k++) {
                            sum[k] += share * pull[i][k] * pull[j][k];
                        }
                    }
                }
            }
        }
        return sum;
    }
}
