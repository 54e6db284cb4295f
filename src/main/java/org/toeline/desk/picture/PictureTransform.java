package org.toeline.desk.picture;

import org.toeline.geometry.ImagePoint;

/**
 * How a picture lies on the screen: device = scale · pixel + offset. Immutable.
 *
 * @param scale device units a picture pixel
 */
public record PictureTransform(double scale, double offsetX, double offsetY) {

    private static final double LEAST = 0.05;
    private static final double MOST = 40;

    /** The whole picture in the middle of an area. */
    static PictureTransform fit(double pictureWidth, double pictureHeight, double width, double height) {
        double scale = Math.max(LEAST, Math.min(width / pictureWidth, height / pictureHeight));
        return new PictureTransform(scale, (width - scale * pictureWidth) / 2, (height - scale * pictureHeight) / 2);
    }

    /** Larger or smaller by a factor, what lies under the pointer stays there. */
    PictureTransform zoomedAt(double x, double y, double factor) {
        double next = Math.max(LEAST, Math.min(MOST, scale * factor));
        double f = next / scale;
        return new PictureTransform(next, x - f * (x - offsetX), y - f * (y - offsetY));
    }

    PictureTransform panned(double dx, double dy) {
        return new PictureTransform(scale, offsetX + dx, offsetY + dy);
    }

    public double deviceX(ImagePoint p) {
        return scale * p.xPx() + offsetX;
    }

    public double deviceY(ImagePoint p) {
        return scale * p.yPx() + offsetY;
    }

    ImagePoint picture(double x, double y) {
        return new ImagePoint((x - offsetX) / scale, (y - offsetY) / scale);
    }
}
