package org.toeline.assist;

import java.util.ArrayList;
import java.util.List;
import org.toeline.geometry.ImagePoint;

/** The pixels about a ball, brightness only, each knowing its neighbours; their middles are {@link Stretch made round}. */
final class BallPatch {

    /**
     * @param x       column of the pixel, as {@code y} its row
     * @param middleX where its middle is when the ball is made round, as {@code middleY}
     */
    record Pixel(int x, int y, double middleX, double middleY, double level) {}

    /** Rows slip by this share against one another. */
    private static final double GOLDEN = 0.382;

    final Circle about;
    final List<Pixel> pixels = new ArrayList<>();
    private final int left;
    private final int top;
    private final int across;
    private final int[] places;

    /** All pixels up to so far beyond a circle. */
    BallPatch(Colours colours, Stretch stretch, Circle about, double reachPx) {
        this(colours, stretch, about, reachPx, Integer.MAX_VALUE);
    }

    /**
     * Some of the pixels of a large circle, spread evenly.
     *
     * @param reachPx how far beyond the circle
     * @param enough  about how many
     */
    BallPatch(Colours colours, Stretch stretch, Circle about, double reachPx, int enough) {
        this.about = about;
        double reach = about.r() + reachPx;
        ImagePoint middle = stretch.seen(about.x(), about.y());
        double seen = reach * stretch.root();
        left = (int) Math.floor(middle.xPx() - seen);
        top = (int) Math.floor(middle.yPx() - seen);
        across = (int) Math.ceil(2 * seen) + 2;
        places = new int[across * across];
        java.util.Arrays.fill(places, -1);
        int every = Math.max(1, (int) Math.round(Math.PI * reach * reach / enough));
        int slip = (int) Math.round(GOLDEN * every);
        for (int y = top; y < top + across; y++) {
            for (int x = left; x < left + across; x++) {
                ImagePoint at = stretch.round(x + 0.5, y + 0.5);
                if (Math.hypot(at.xPx() - about.x(), at.yPx() - about.y()) <= reach
                        && Math.floorMod(x + slip * y, every) == 0
                        && colours.holds(x, y)) {
                    places[(y - top) * across + x - left] = pixels.size();
                    pixels.add(new Pixel(x, y, at.xPx(), at.yPx(), colours.of(x, y, 0)));
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
