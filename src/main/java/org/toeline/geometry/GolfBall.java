package org.toeline.geometry;

/** The ball that is played, for everything that sees it, measures by it or lets it fly. */
public final class GolfBall {

    /** The smallest a ball may be, metres (R&A and USGA, Equipment Rules, Part 4: not less than 42.67 mm). */
    public static final double LEAST_DIAMETER_M = 0.04267;
    /** What balls measure, metres: makers stay just above the least, by some hundredths of a millimetre (common practice). */
    public static final double USUAL_DIAMETER_M = LEAST_DIAMETER_M + 0.00005;

    private GolfBall() {}
}
