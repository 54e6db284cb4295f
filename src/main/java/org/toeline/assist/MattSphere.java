package org.toeline.assist;

/** How a blurred matt sphere looks. */
final class MattSphere {

    /** How many harmonics there are. */
    static final int HARMONICS = 9;

    private MattSphere() {
    }

    /** The harmonics at a place of the disc, its radius 1: any even light on a matt sphere is a sum of them. */
    static double[] harmonics(double x, double y) {
        double z = Math.sqrt(Math.max(0.01, 1 - x * x - y * y));
        return new double[] {1, x, y, z - 0.67, x * y, x * z, y * z, x * x - y * y, 3 * z * z - 1.5};
    }

    /** Normal distribution function, to 1e-4 and better (logistic of a cubic, Page 1977). */
    static double covered(double u) {
        return 1 / (1 + Math.exp(-1.5976 * u - 0.07056 * u * u * u));
    }
}
