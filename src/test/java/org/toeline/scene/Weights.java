package org.toeline.scene;

import java.util.Arrays;

/** How much each corner of a surface goes with each bone: by how near the bone's own shape is. */
final class Weights {

    private static final double SOFT_M = 0.014;

    private Weights() {}

    static void of(Part part, float[] at, byte[] bones, float[] weights) {
        double[] share = new double[Bone.values().length];
        for (int c = 0; c < at.length / 3; c++) {
            Arrays.fill(share, 0);
            double nearest = Double.MAX_VALUE;
            for (Shape shape : part.shapes()) {
                nearest = Math.min(nearest, shape.distance(at[3 * c], at[3 * c + 1], at[3 * c + 2]));
            }
            for (Shape shape : part.shapes()) {
                double d = shape.distance(at[3 * c], at[3 * c + 1], at[3 * c + 2]) - nearest;
                int bone = shape.bone.ordinal();
                share[bone] = Math.max(share[bone], Math.exp(-d / SOFT_M));
            }
            take(share, c, bones, weights);
        }
    }

    private static void take(double[] share, int corner, byte[] bones, float[] weights) {
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            int best = 0;
            for (int b = 1; b < share.length; b++) {
                if (share[b] > share[best]) {
                    best = b;
                }
            }
            bones[3 * corner + i] = (byte) best;
            weights[3 * corner + i] = (float) share[best];
            sum += share[best];
            share[best] = 0;
        }
        for (int i = 0; i < 3; i++) {
            weights[3 * corner + i] /= (float) sum;
        }
    }
}
