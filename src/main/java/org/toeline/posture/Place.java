package org.toeline.posture;

/**
 * A point of the world as sums of unknowns: coordinate {@code axis[k]} (0 t, 1 h, 2 u) gets
 * {@code factor[k] · x[index[k]]}; metres.
 */
record Place(int[] axis, int[] index, double[] factor) {

    /** Three unknowns in a row. */
    static Place at(int base) {
        return new Place(new int[] {0, 1, 2}, new int[] {base, base + 1, base + 2}, new double[] {1, 1, 1});
    }

    /** Two unknowns in a row, on the ground. */
    static Place onGround(int base) {
        return new Place(new int[] {0, 1}, new int[] {base, base + 1}, new double[] {1, 1});
    }

    /** The ball's centre: half a diameter above its underside. */
    static Place ball(int base) {
        return new Place(
                new int[] {0, 1, 2, 2},
                new int[] {base, base + 1, base + Unknowns.BALL_UNDERSIDE, base + Unknowns.BALL_DIAMETER},
                new double[] {1, 1, 1, 0.5});
    }

    /** This point of the ground moved and turned a little with its layout, of which it is the point (t, h). */
    Place laidAgain(int move, double t, double h) {
        int n = axis.length;
        int[] a = java.util.Arrays.copyOf(axis, n + 4);
        int[] i = java.util.Arrays.copyOf(index, n + 4);
        double[] f = java.util.Arrays.copyOf(factor, n + 4);
        for (int k = 0; k < 2; k++) {
            a[n + k] = k;
            i[n + k] = move + k;
            f[n + k] = 1;
            a[n + 2 + k] = k;
            i[n + 2 + k] = move + 2;
            f[n + 2 + k] = k == 0 ? -h : t;
        }
        return new Place(a, i, f);
    }

    /** This place with the player's shift added on the first {@code axes} axes. */
    Place shifted(int shift, int axes) {
        int n = axis.length;
        int[] a = java.util.Arrays.copyOf(axis, n + axes);
        int[] i = java.util.Arrays.copyOf(index, n + axes);
        double[] f = java.util.Arrays.copyOf(factor, n + axes);
        for (int k = 0; k < axes; k++) {
            a[n + k] = k;
            i[n + k] = shift + k;
            f[n + k] = 1;
        }
        return new Place(a, i, f);
    }

    void evaluate(double[] x, double[] out) {
        out[0] = 0;
        out[1] = 0;
        out[2] = 0;
        for (int k = 0; k < axis.length; k++) {
            out[axis[k]] += factor[k] * x[index[k]];
        }
    }
}
