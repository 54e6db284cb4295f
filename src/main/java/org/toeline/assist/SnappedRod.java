package org.toeline.assist;

import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;

/**
 * A rod with both of its ends, on its middle axis, in the order of the drag.
 *
 * @param sigmaAcrossPx standard deviation of an end across the rod, pixels, above zero
 * @param widthPx       width of the rod, pixels
 */
public record SnappedRod(End from, End to, double sigmaAcrossPx, double widthPx) {

    /** What lies beyond an end. */
    public enum Beyond {
        /** The ground goes on: this is the end of the rod. */
        GROUND,
        /** Something lies over it: the rod may go on behind, the end is only where it is last seen. */
        COVER
    }

    /** @param sigmaAlongPx standard deviation along the rod, pixels, above zero */
    public record End(ImagePoint at, double sigmaAlongPx, Beyond beyond) {

        public End {
            Finite.requirePositive(sigmaAlongPx, "sigmaAlongPx");
        }

        /** One figure for both directions, as a mark needs it: the larger. */
        public double sigmaPx(double sigmaAcrossPx) {
            return Math.max(sigmaAlongPx, sigmaAcrossPx);
        }
    }

    /**
     * How far below the middle of what is seen a rod touches the ground, in half widths as seen, blur included: across the line of
     * sight 0.45 where it is pressed halfway into the turf (the sample clips), some 0.85 where it lies on top; which it is cannot be
     * seen.
     */
    private static final double DOWN_ACROSS = 0.65;

    /** The same where it runs away from the camera and its ends are seen by their tops, pressed in or not. */
    private static final double DOWN_AWAY = 0.9;

    private static final double DOWN_SIGMA = 0.2;

    public SnappedRod {
        Finite.requirePositive(sigmaAcrossPx, "sigmaAcrossPx");
        Finite.requirePositive(widthPx, "widthPx");
    }

    /** Where an end of it touches the ground, which is what its place on the floor means; pixels. */
    public ImagePoint onGround(End end) {
        double away = Math.abs(to.at().yPx() - from.at().yPx()) / from.at().distancePx(to.at());
        double down = DOWN_ACROSS + (DOWN_AWAY - DOWN_ACROSS) * away;
        return end.at().plus(0, down * widthPx / 2);
    }

    /** Standard deviation of {@link #onGround}, one figure for both directions; pixels. */
    public double sigmaOnGroundPx(End end) {
        return Math.hypot(end.sigmaPx(sigmaAcrossPx), DOWN_SIGMA * widthPx / 2);
    }
}
