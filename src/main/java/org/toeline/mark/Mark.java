package org.toeline.mark;

import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;

/**
 * A landmark placed on a frame.
 *
 * @param sigmaPx the standard deviation of the click in each direction, in pixels; above zero. How well the landmark
 *                itself can be seen on a clothed person is not in it: the estimator adds that.
 * @param origin  whether the coach placed or accepted it or the program only suggests it
 */
public record Mark(Landmark landmark, ImagePoint at, double sigmaPx, Origin origin) {

    /** Who stands for the mark. */
    public enum Origin {
        /** Placed by a person, or looked at and accepted. */
        PLACED,
        /** Nobody has accepted it yet: what rests on it is a draft. */
        SUGGESTED
    }

    public Mark {
        Finite.requirePositive(sigmaPx, "sigmaPx");
    }

    public static Mark placed(Landmark landmark, ImagePoint at, double sigmaPx) {
        return new Mark(landmark, at, sigmaPx, Origin.PLACED);
    }

    public Mark movedTo(ImagePoint to) {
        return new Mark(landmark, to, sigmaPx, Origin.PLACED);
    }
}
