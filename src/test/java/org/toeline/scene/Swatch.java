package org.toeline.scene;

/** Colour (linear light) and gloss of one place of a surface; reused from pixel to pixel. */
final class Swatch {

    double red;
    double green;
    double blue;
    double gloss;

    void colour(int rgb) {
        red = Light.linear(rgb >> 16 & 255);
        green = Light.linear(rgb >> 8 & 255);
        blue = Light.linear(rgb & 255);
        gloss = 0;
    }

    /** Mixes in a colour by a share between 0 and 1. */
    void over(int rgb, double share) {
        red += (Light.linear(rgb >> 16 & 255) - red) * share;
        green += (Light.linear(rgb >> 8 & 255) - green) * share;
        blue += (Light.linear(rgb & 255) - blue) * share;
    }

    void times(double factor) {
        red *= factor;
        green *= factor;
        blue *= factor;
    }

    /** 1 on a line of a half width, 0 away from it, soft over a pixel. */
    static double line(double distance, double halfWidthM, double finenessM) {
        double d = Math.abs(distance);
        double edge = Math.max(finenessM, 0.0008);
        return Math.max(0, Math.min(1, (halfWidthM + edge / 2 - d) / edge)) * Math.min(1, 2.2 * halfWidthM / edge);
    }

    /** 1 where the signed distance is below 0, soft over a pixel. */
    static double inside(double distance, double finenessM) {
        double edge = Math.max(finenessM, 0.0008);
        return Math.max(0, Math.min(1, 0.5 - distance / edge));
    }
}
