package org.toeline.mark;

import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;

/**
 * Where a point of the floor layout is seen in a picture.
 *
 * @param pointId the {@link FloorReference#id()} it shows
 * @param sigmaPx standard deviation of the click in each direction, pixels, above zero
 */
public record FloorMark(String pointId, ImagePoint at, double sigmaPx) {

    public FloorMark {
        Finite.requirePositive(sigmaPx, "sigmaPx");
    }

    public FloorMark movedTo(ImagePoint to) {
        return new FloorMark(pointId, to, sigmaPx);
    }
}
