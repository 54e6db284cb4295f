package org.toeline.video;

/**
 * A frame made small and grey, upright as shown, for looking at motion.
 *
 * @param seconds presentation time
 * @param grey    brightness, 0 to 255 as coded, row by row from the top left, {@code width · height} of them
 */
public record GreyPicture(double seconds, int width, int height, float[] grey) {

    public GreyPicture {
        if (grey.length != width * height) {
            throw new IllegalArgumentException(grey.length + " values for a picture of " + width + " × " + height);
        }
    }
}
