package org.toeline.geometry;

/**
 * A point in a picture, in pixels of the display-oriented, full-resolution picture: x right, y down, origin at the
 * top-left corner, pixel centres at half-integers. It may lie outside the picture; it is always finite.
 */
public record ImagePoint(double xPx, double yPx) {

    public ImagePoint {
        Finite.require(xPx, "xPx");
        Finite.require(yPx, "yPx");
    }

    public ImagePoint plus(double dxPx, double dyPx) {
        return new ImagePoint(xPx + dxPx, yPx + dyPx);
    }

    public double distancePx(ImagePoint other) {
        return Math.hypot(xPx - other.xPx, yPx - other.yPx);
    }

    /** The same point in the mirror image of a picture that is {@code widthPx} wide. */
    public ImagePoint mirrored(double widthPx) {
        return new ImagePoint(widthPx - xPx, yPx);
    }
}
