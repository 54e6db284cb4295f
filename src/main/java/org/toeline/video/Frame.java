package org.toeline.video;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/**
 * One frame as it is shown. Whoever holds it may read {@link #argb()} but not write to it.
 *
 * @param index   place in the clip, from 0
 * @param seconds presentation time
 * @param argb    opaque pixels, row by row from the top left, {@code width · height} of them
 */
public record Frame(int index, double seconds, int width, int height, int[] argb) {

    public Frame {
        if (argb.length != width * height) {
            throw new IllegalArgumentException(argb.length + " pixels for a picture of " + width + " × " + height);
        }
    }

    /** A copy as a picture. */
    public BufferedImage toImage() {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        System.arraycopy(argb, 0, ((DataBufferInt) image.getRaster().getDataBuffer()).getData(), 0, argb.length);
        return image;
    }

    /** Brightness of a pixel, 0 to 255 (BT.709 weights), the nearest inside the picture. */
    public double grey(int x, int y) {
        int p = argb[Math.max(0, Math.min(height - 1, y)) * width + Math.max(0, Math.min(width - 1, x))];
        return 0.2126 * (p >> 16 & 255) + 0.7152 * (p >> 8 & 255) + 0.0722 * (p & 255);
    }

    /**
     * The least of a pixel's red, green and blue, 0 to 255, the nearest inside the picture: high for what is white, low
     * for what is dark and for what has a strong colour.
     */
    public double whiteness(int x, int y) {
        int p = argb[Math.max(0, Math.min(height - 1, y)) * width + Math.max(0, Math.min(width - 1, x))];
        return Math.min(p >> 16 & 255, Math.min(p >> 8 & 255, p & 255));
    }
}
