package org.toeline.assist;

import java.util.Arrays;
import org.toeline.video.Frame;

/**
 * The colours of a frame as brightness and two differences of colour (BT.709), each in levels of 255. Clips carry the
 * differences at half resolution, and they come back as blocks of two by two pixels: weights of one, two, one undo that to
 * a straight course between the middles of the blocks. Computed where asked for, and kept. One thread at a time.
 */
final class Colours {

    private final Frame frame;
    private final int left;
    private final int top;
    private final int across;
    private final int down;
    private final float[] kept;

    /** For a part of the frame; asked beyond it, the nearest pixel of the part answers. */
    Colours(Frame frame, double fromX, double fromY, double toX, double toY) {
        this.frame = frame;
        left = Math.max(0, Math.min(frame.width() - 1, (int) Math.floor(fromX)));
        top = Math.max(0, Math.min(frame.height() - 1, (int) Math.floor(fromY)));
        across = Math.max(1, Math.min(frame.width(), (int) Math.ceil(toX) + 1) - left);
        down = Math.max(1, Math.min(frame.height(), (int) Math.ceil(toY) + 1) - top);
        kept = new float[3 * across * down];
        Arrays.fill(kept, Float.NaN);
    }

    /** Whether a pixel is in this part of the frame. */
    boolean holds(int x, int y) {
        return x >= left && y >= top && x < left + across && y < top + down;
    }

    /** Adds a pixel's colour, so many times. */
    void add(double[] sum, int x, int y, double weight) {
        int i = place(x, y);
        sum[0] += weight * kept[i];
        sum[1] += weight * kept[i + 1];
        sum[2] += weight * kept[i + 2];
    }

    /** One of a pixel's three: brightness 0, difference to blue 1, difference to red 2. */
    double of(int x, int y, int which) {
        return kept[place(x, y) + which];
    }

    private int place(int x, int y) {
        int px = Math.max(0, Math.min(across - 1, x - left));
        int py = Math.max(0, Math.min(down - 1, y - top));
        int i = 3 * (py * across + px);
        if (Float.isNaN(kept[i])) {
            compute(left + px, top + py, i);
        }
        return i;
    }

    private void compute(int x, int y, int i) {
        double blue = 0;
        double red = 0;
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                int p = pixel(x + dx, y + dy);
                double weight = (2 - Math.abs(dx)) * (2 - Math.abs(dy)) / 16.0;
                double l = brightness(p);
                blue += weight * ((p & 255) - l) / 1.8556;
                red += weight * ((p >> 16 & 255) - l) / 1.5748;
            }
        }
        kept[i] = (float) brightness(pixel(x, y));
        kept[i + 1] = (float) blue;
        kept[i + 2] = (float) red;
    }

    private int pixel(int x, int y) {
        return frame.argb()[
                Math.max(0, Math.min(frame.height() - 1, y)) * frame.width()
                        + Math.max(0, Math.min(frame.width() - 1, x))];
    }

    private static double brightness(int p) {
        return 0.2126 * (p >> 16 & 255) + 0.7152 * (p >> 8 & 255) + 0.0722 * (p & 255);
    }
}
