package org.toeline.assist;

import org.toeline.geometry.ImagePoint;
import org.toeline.video.Frame;

/**
 * How a ball is drawn out that is away from the middle of the picture: its outline is an ellipse, longer away from the middle
 * by one over the cosine of the angle from the lens's axis. At 270 px and a focal length of 950 that is 4 %, two thirds of a
 * pixel of a small ball. Near one place the picture is made round again by an affine map that keeps areas, so that the radius
 * found there is the outline's mean one.
 *
 * @param x    the place where nothing moves, pixels, as {@code y}
 * @param cos  of the direction away from the middle, as {@code sin}
 * @param root square root of how much longer the ellipse is than wide
 */
record Stretch(double x, double y, double cos, double sin, double root) {

    /** At a place in a picture taken through a lens whose axis meets the picture's middle. */
    static Stretch at(ImagePoint place, Frame frame, double focalPx) {
        double dx = place.xPx() - frame.width() / 2.0;
        double dy = place.yPx() - frame.height() / 2.0;
        double away = Math.max(1e-9, Math.hypot(dx, dy));
        return new Stretch(place.xPx(), place.yPx(), dx / away, dy / away, Math.pow(1 + sq(away / focalPx), 0.25));
    }

    /** Where a place of the picture goes. */
    ImagePoint round(double atX, double atY) {
        return moved(atX, atY, 1 / root);
    }

    /** Where a place of the rounded picture comes from. */
    ImagePoint seen(double atX, double atY) {
        return moved(atX, atY, root);
    }

    private ImagePoint moved(double atX, double atY, double along) {
        double out = (cos * (atX - x) + sin * (atY - y)) * along;
        double across = (cos * (atY - y) - sin * (atX - x)) / along;
        return new ImagePoint(x + cos * out - sin * across, y + sin * out + cos * across);
    }

    private static double sq(double v) {
        return v * v;
    }
}
