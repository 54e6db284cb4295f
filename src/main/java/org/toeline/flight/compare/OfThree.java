package org.toeline.flight.compare;

/**
 * What {@link Calibration} is multiplied by besides when one of the setups, or both, have three shots only: with so few, the
 * coverage hangs on which of the two carries the variance, and no one multiplier serves. A table by the other setup's count
 * and by the share of the variance that those three carry, found by simulation in the same cases and with the same aim.
 */
final class OfThree {

    static final int COUNT = 3;

    private static final double[] COUNTS = {4, 5, 6, 7, 8, 10, 15, 20, 30};
    private static final double[] SCALES = {1, 1.005, 0.955, 0.972, 0.988, 1, 1.01, 1.02, 1.035};
    private static final double[] SHARES = {0.30, 0.65, 0.88, 0.97};
    private static final double[] BY_SHARE = {0.92, 1.03, 1.10, 1.09};
    /** The first of {@link #BY_SHARE} when the other setup has four shots. */
    private static final double FOUR_LOW = 0.95;

    private static final double BOTH_EDGE = 1.0;
    private static final double BOTH_MIDDLE = 0.93;

    private OfThree() {}

    /**
     * @param other the other setup's shots, at least three
     * @param share of the variance of the difference that the three shots carry, 0 to 1
     */
    static double factor(int other, double share) {
        if (other == COUNT) {
            return BOTH_EDGE + (BOTH_MIDDLE - BOTH_EDGE) * 2 * Math.min(share, 1 - share);
        }
        double[] byShare = BY_SHARE.clone();
        if (other == COUNT + 1) {
            byShare[0] = FOUR_LOW;
        }
        return Calibration.between(inverse(COUNTS), SCALES, -1.0 / other) * Calibration.between(SHARES, byShare, share);
    }

    private static double[] inverse(double[] counts) {
        double[] inverse = new double[counts.length];
        for (int i = 0; i < counts.length; i++) {
            inverse[i] = -1 / counts[i];
        }
        return inverse;
    }
}
