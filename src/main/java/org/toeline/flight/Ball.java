package org.toeline.flight;

import org.toeline.geometry.GolfBall;

/**
 * The golf ball that flies: the heaviest and smallest that the R&A / USGA Equipment Rules allow (Part 4: at most
 * 45.93 g, at least 42.67 mm), which is what is played.
 */
public final class Ball {

    public static final double MASS_KG = 0.04593;
    public static final double RADIUS_M = GolfBall.LEAST_DIAMETER_M / 2;
    public static final double SECTION_M2 = Math.PI * RADIUS_M * RADIUS_M;

    private Ball() {}
}
