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

    public SnappedRod {
        Finite.requirePositive(sigmaAcrossPx, "sigmaAcrossPx");
        Finite.requirePositive(widthPx, "widthPx");
    }
}
