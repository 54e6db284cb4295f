package org.toeline.mark;

import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;

/**
 * Where a point of the floor layout is seen in a picture.
 *
 * @param pointId the {@link FloorReference#id()} it shows
 * @param sigmaPx standard deviation of the click in each direction, pixels, above zero
 * @param origin whether somebody placed or accepted it
 */
public record FloorMark(String pointId, ImagePoint at, double sigmaPx, Mark.Origin origin) {

    public FloorMark(String pointId, ImagePoint at, double sigmaPx) {
        this(pointId, at, sigmaPx, Mark.Origin.PLACED);
    }

    public FloorMark {
        Finite.requirePositive(sigmaPx, "sigmaPx");
    }

    public FloorMark movedTo(ImagePoint to) {
        return new FloorMark(pointId, to, sigmaPx);
    }

    public FloorMark accepted() {
        return new FloorMark(pointId, at, sigmaPx);
    }
}
