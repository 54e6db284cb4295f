package org.toeline.scene;

import java.awt.image.BufferedImage;

/** A picture as shown: 8 bit red, green, blue, row by row. */
record Picture(int width, int height, byte[] rgb) {

    Picture mirrored() {
        byte[] out = new byte[rgb.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                System.arraycopy(rgb, 3 * (y * width + x), out, 3 * (y * width + width - 1 - x), 3);
            }
        }
        return new Picture(width, height, out);
    }

    BufferedImage image() {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < width * height; i++) {
            image.setRGB(
                    i % width,
                    i / width,
                    (rgb[3 * i] & 255) << 16 | (rgb[3 * i + 1] & 255) << 8 | rgb[3 * i + 2] & 255);
        }
        return image;
    }
}
