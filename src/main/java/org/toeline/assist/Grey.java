package org.toeline.assist;

import org.toeline.geometry.ImagePoint;
import org.toeline.video.Frame;

/** Brightness of a frame (BT.709 weights), 0 to 255, sampled anywhere; beyond the picture its nearest pixel. */
record Grey(int width, int height, byte[] levels) {

    static Grey of(Frame frame) {
        byte[] levels = new byte[frame.width() * frame.height()];
        int[] argb = frame.argb();
        for (int i = 0; i < levels.length; i++) {
            int p = argb[i];
            // weights in 65536ths
            levels[i] = (byte) ((13933 * (p >> 16 & 255) + 46871 * (p >> 8 & 255) + 4732 * (p & 255) + 32768) >> 16);
        }
        return new Grey(frame.width(), frame.height(), levels);
    }

    /** A pixel by its column and row. */
    double pixel(int x, int y) {
        return levels[Math.max(0, Math.min(height - 1, y)) * width + Math.max(0, Math.min(width - 1, x))] & 255;
    }

    /** Between pixels, bilinear; pixel centres at half-integers. */
    double at(double xPx, double yPx) {
        int x = (int) Math.floor(xPx - 0.5);
        int y = (int) Math.floor(yPx - 0.5);
        double fx = xPx - 0.5 - x;
        double fy = yPx - 0.5 - y;
        return (1 - fy) * ((1 - fx) * pixel(x, y) + fx * pixel(x + 1, y))
                + fy * ((1 - fx) * pixel(x, y + 1) + fx * pixel(x + 1, y + 1));
    }

    /** Correlation of what lies around a point with what lies around one of another picture, −1 to 1; brightness may differ. */
    double likeness(ImagePoint p, Grey other, ImagePoint q) {
        int half = Flow.WINDOW / 2;
        double n = 0;
        double[] s = new double[5];
        for (int dy = -half; dy <= half; dy++) {
            for (int dx = -half; dx <= half; dx++) {
                double u = at(p.xPx() + dx, p.yPx() + dy);
                double v = other.at(q.xPx() + dx, q.yPx() + dy);
                n++;
                s[0] += u;
                s[1] += v;
                s[2] += u * u;
                s[3] += v * v;
                s[4] += u * v;
            }
        }
        double uu = s[2] - s[0] * s[0] / n;
        double vv = s[3] - s[1] * s[1] / n;
        return uu < 1e-9 || vv < 1e-9 ? 0 : (s[4] - s[0] * s[1] / n) / Math.sqrt(uu * vv);
    }
}
