package org.toeline.assist;

import java.util.ArrayList;
import java.util.List;

/** The pixels about a ball, brightness only, each knowing its neighbours. */
final class BallPatch {

    /** @param x column of the pixel, its middle half a pixel further, as {@code y} */
    record Pixel(int x, int y, double level) {

        double middleX() {
            return x + 0.5;
        }

        double middleY() {
            return y + 0.5;
        }
    }

    final Circle about;
    final List<Pixel> pixels = new ArrayList<>();
    private final int left;
    private final int top;
    private final int across;
    private final int[] places;

    /** @param reachPx how far beyond the circle */
    BallPatch(Colours colours, Circle about, double reachPx) {
        this.about = about;
        double reach = about.r() + reachPx;
        left = (int) Math.floor(about.x() - reach);
        top = (int) Math.floor(about.y() - reach);
        across = (int) Math.ceil(2 * reach) + 2;
        places = new int[across * across];
        java.util.Arrays.fill(places, -1);
        for (int y = top; y < top + across; y++) {
            for (int x = left; x < left + across; x++) {
                if (Math.hypot(x + 0.5 - about.x(), y + 0.5 - about.y()) <= reach && colours.holds(x, y)) {
                    places[(y - top) * across + x - left] = pixels.size();
                    pixels.add(new Pixel(x, y, colours.of(x, y, 0)));
                }
            }
        }
    }

    /** The place in the list of the pixel so far away from another; −1 where there is none. */
    int neighbour(Pixel of, int dx, int dy) {
        int x = of.x + dx - left;
        int y = of.y + dy - top;
        return x < 0 || y < 0 || x >= across || y >= across ? -1 : places[y * across + x];
    }
}
