package org.toeline.assist;

/**
 * A stretch of motion between two moments of standing still, and what it looks like. Areas are in squares of the height
 * that the motion covers, which is about the player's, so that it does not matter how large the player is in the picture.
 * Limits were set by looking at rendered swings, waggles and walks from both sides; each stands between what was seen on its two sides.
 *
 * @param from      first picture
 * @param to        last picture
 * @param peak      greatest amount of motion
 * @param sweptShare share of the picture in which anything moved at any time
 * @param swept     area in which anything moved at any time: a waggle 0.02 to 0.11, a swing or a club taken away for a
 *                  second 0.18 to 0.36, a walk about 1
 * @param moving    area that moves at once, at the median: a swing up to 0.05, a walk 0.15 and more
 * @param startsAt  how far down the motion begins: taking the club away 0.47 to 0.72, lowering it after the finish up to
 *                  0.31
 */
record Burst(int from, int to, double peak, double sweptShare, double swept, double moving, double startsAt) {

    static final double BEGINNING_S = 0.22;
    private static final double LEAST_SWEPT = 0.13;
    private static final double SURELY_SWEPT = 0.20;
    private static final double LEAST_SHARE = 0.012;
    private static final double MOST_MOVING = 0.10;
    private static final double SURELY_MOVING = 0.07;
    private static final double LEAST_DOWN = 0.36;
    private static final double SURELY_DOWN = 0.50;

    /** Somebody changes place, or the camera does. */
    boolean walk() {
        return moving > MOST_MOVING;
    }

    boolean swing() {
        return swept >= LEAST_SWEPT && sweptShare >= LEAST_SHARE && !walk() && startsAt >= LEAST_DOWN;
    }

    /** How far inside the limits of a swing, 0 at a limit to 1. */
    double clearness() {
        return Math.min(
                share(swept, LEAST_SWEPT, SURELY_SWEPT),
                Math.min(share(moving, MOST_MOVING, SURELY_MOVING), share(startsAt, LEAST_DOWN, SURELY_DOWN)));
    }

    /** 0 at {@code none}, 1 at {@code all} and beyond. */
    static double share(double value, double none, double all) {
        return Math.max(0, Math.min(1, (value - none) / (all - none)));
    }
}
