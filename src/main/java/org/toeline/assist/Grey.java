package org.toeline.assist;

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
}
