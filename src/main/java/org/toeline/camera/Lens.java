package org.toeline.camera;

import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;

/**
 * A lens: the pinhole model with two radial coefficients, as in Zhang 2000 and OpenCV. With x, y the normalised
 * coordinates (right and down, over depth) and r² = x² + y²,
 * <pre>  px = cx + f·x·(1 + k1·r² + k2·r⁴)     py = cy + f·y·(1 + k1·r² + k2·r⁴)</pre>
 *
 * @param focalPx focal length in pixels of the picture as shown, above zero
 * @param cxPx    principal point, pixels from the top-left corner of the picture
 * @param cyPx    principal point, pixels from the top-left corner of the picture
 */
public record Lens(double focalPx, double cxPx, double cyPx, double k1, double k2) {

    public Lens {
        Finite.requirePositive(focalPx, "focalPx");
        Finite.require(cxPx, "cxPx");
        Finite.require(cyPx, "cyPx");
        Finite.require(k1, "k1");
        Finite.require(k2, "k2");
    }

    /** A lens without distortion whose principal point is the middle of the picture. */
    public static Lens centred(double focalPx, double widthPx, double heightPx) {
        return new Lens(focalPx, widthPx / 2, heightPx / 2, 0, 0);
    }

    /** The pixel of a direction given in normalised coordinates (right and down, over depth). */
    public ImagePoint pixel(double x, double y) {
        double r2 = x * x + y * y;
        double factor = focalPx * (1 + r2 * (k1 + k2 * r2));
        return new ImagePoint(cxPx + factor * x, cyPx + factor * y);
    }

    /**
     * Whether the model holds in a direction given in normalised coordinates: beyond the radius at which the distortion's
     * polynomial turns back it would show again what is in the picture already.
     */
    public boolean holds(double x, double y) {
        double r2 = x * x + y * y;
        return 1 + r2 * (3 * k1 + 5 * k2 * r2) > 0;
    }
}
