package org.toeline.posture;

import org.toeline.geometry.ImagePoint;
import org.toeline.mark.LensNote;
import org.toeline.mark.ViewMarks;

/** Frees a pixel of the lens's radial distortion, by fixed-point iteration with the usual or stated focal length. */
final class Straight {

    private static final int ROUNDS = 8;

    private Straight() {}

    static ImagePoint of(ViewMarks v, ImagePoint seen) {
        LensNote lens = v.lens();
        double k1 = lens.k1().orElse(0);
        double k2 = lens.k2().orElse(0);
        if (k1 == 0 && k2 == 0) {
            return seen;
        }
        double f = Math.exp(CameraHabits.logFocal(v));
        double cx = lens.cxPx().orElse(v.widthPx() / 2.0);
        double cy = lens.cyPx().orElse(v.heightPx() / 2.0);
        double dx = (seen.xPx() - cx) / f;
        double dy = (seen.yPx() - cy) / f;
        double x = dx;
        double y = dy;
        for (int i = 0; i < ROUNDS; i++) {
            double r2 = x * x + y * y;
            double bend = 1 + r2 * (k1 + k2 * r2);
            x = dx / bend;
            y = dy / bend;
        }
        return new ImagePoint(cx + f * x, cy + f * y);
    }
}
