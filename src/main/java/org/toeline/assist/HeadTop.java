package org.toeline.assist;

import java.util.Arrays;
import java.util.Optional;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.video.Frame;

/**
 * The top line of a wood's head beside a ball on a tee: a dark thing of about a head's size, darker than all that is around its
 * upper edge. A head that is not dark is left to the hand. Lengths are of the ball's diameter.
 */
final class HeadTop {

    /** How far a head reaches from the ball's middle, and how far up and down it may lie: a driver's is 120 mm by 62 mm. */
    private static final double NEAR = 0.3;

    private static final double FAR = 3.6;
    private static final double UP = 1.3;
    private static final double DOWN = 2.2;
    /** How dark it is against the ground before the ball. */
    private static final double DARK = 0.75;
    /** A shaft is narrower than this, and a head wider. */
    private static final double NARROW = 0.45;

    private static final double LEAST_WIDE = 1.3;
    private static final double MOST_WIDE = 3.6;
    private static final double LEAST_HIGH = 0.7;
    private static final double MOST_HIGH = 2.0;
    /** By so much the edge must stand off what is above it, levels of 255. */
    private static final double LEAST_STEP = 10;
    /** Of the mark in each direction; across, a head is as flat as that. */
    private static final double SIGMA = 0.035;

    private static final double LEAST_SIGMA_PX = 1.0;

    private final Frame frame;
    private final BallMark ball;
    private final double d;
    private final int way;
    private final int x0;
    private final int y0;
    private final int width;
    private final int height;
    private final double[] smooth;

    /** @param shaft where it ends: the head lies on that side of the ball */
    HeadTop(Frame frame, BallMark ball, ImagePoint shaft) {
        this.frame = frame;
        this.ball = ball;
        this.d = TeeSuggester.diameter(ball);
        this.way = shaft.xPx() < ball.centre().xPx() ? -1 : 1;
        double from = ball.centre().xPx() + way * NEAR * d;
        double to = ball.centre().xPx() + way * FAR * d;
        this.x0 = (int) Math.max(0, Math.min(from, to));
        this.y0 = (int) Math.max(0, ball.centre().yPx() - UP * d);
        this.width = (int) Math.min(frame.width(), Math.max(from, to)) - x0;
        this.height = (int) Math.min(frame.height(), ball.centre().yPx() + DOWN * d) - y0;
        this.smooth = smooth();
    }

    Optional<Mark> find() {
        if (width < d || height < d) {
            return Optional.empty();
        }
        double limit = DARK * ground();
        int[] label = new int[width * height];
        int[] best = new int[0];
        for (int i = 0; i < label.length; i++) {
            if (label[i] == 0 && isWide(i % width, i / width, limit)) {
                int[] piece = piece(i, label, limit);
                best = piece.length > best.length ? piece : best;
            }
        }
        return best.length > LEAST_HIGH * LEAST_WIDE * d * d / 2 ? top(best) : Optional.empty();
    }

    /** The usual brightness of the ground before the ball. */
    private double ground() {
        double[] levels = new double[400];
        for (int i = 0; i < levels.length; i++) {
            double x = ball.centre().xPx() + (i % 20 - 9.5) / 5 * d;
            double y = ball.centre().yPx() + (2.4 + i / 20 / 20.0) * d;
            levels[i] = frame.grey((int) x, (int) y);
        }
        Arrays.sort(levels);
        return levels[levels.length / 2];
    }

    private double grey(int x, int y) {
        return smooth[Math.max(0, Math.min(height - 1, y)) * width + Math.max(0, Math.min(width - 1, x))];
    }

    /** Means over some pixels across, since turf and a sensor's noise are no edges. */
    private double[] smooth() {
        int across = (int) Math.max(1, 0.05 * d);
        double[] means = new double[Math.max(0, width) * Math.max(0, height)];
        for (int i = 0; i < means.length; i++) {
            for (int k = -across; k <= across; k++) {
                means[i] += frame.grey(x0 + i % width + k, y0 + i / width) / (2 * across + 1);
            }
        }
        return means;
    }

    /** Dark, with dark beside it for more than a shaft's width; a highlight is part of what it lies in. */
    private boolean isWide(int x, int y, double limit) {
        if (x < 0 || y < 0 || x >= width || y >= height || grey(x, y) > limit) {
            return false;
        }
        int from = x;
        int to = x;
        while (from > 0 && grey(from - 1, y) <= limit) {
            from--;
        }
        while (to < width - 1 && grey(to + 1, y) <= limit) {
            to++;
        }
        return to - from + 1 > NARROW * d;
    }

    /** All that hangs together with a place. */
    private int[] piece(int start, int[] label, double limit) {
        int[] queue = new int[width * height];
        int n = 0;
        queue[n++] = start;
        label[start] = 1;
        for (int k = 0; k < n; k++) {
            int x = queue[k] % width;
            int y = queue[k] / width;
            for (int side = 0; side < 4; side++) {
                int nx = x + (side == 0 ? 1 : side == 1 ? -1 : 0);
                int ny = y + (side == 2 ? 1 : side == 3 ? -1 : 0);
                if (isWide(nx, ny, limit) && label[ny * width + nx] == 0) {
                    label[ny * width + nx] = 1;
                    queue[n++] = ny * width + nx;
                }
            }
        }
        return Arrays.copyOf(queue, n);
    }

    private Optional<Mark> top(int[] piece) {
        int[] first = new int[width];
        Arrays.fill(first, Integer.MAX_VALUE);
        int left = width;
        int right = 0;
        int high = height;
        int low = 0;
        for (int i : piece) {
            int x = i % width;
            int y = i / width;
            first[x] = Math.min(first[x], y);
            left = Math.min(left, x);
            right = Math.max(right, x);
            high = Math.min(high, y);
            low = Math.max(low, y);
        }
        double wide = (right - left + 1) / d;
        double tall = (low - high + 1) / d;
        boolean cut = high == 0 || low == height - 1 || (way < 0 ? left == 0 : right == width - 1);
        if (cut || wide < LEAST_WIDE || wide > MOST_WIDE || tall < LEAST_HIGH || tall > MOST_HIGH) {
            return Optional.empty();
        }
        return highest(first, left, right, high);
    }

    /** The middle of the columns in which it reaches highest, and the edge there to a part of a pixel. */
    private Optional<Mark> highest(int[] first, int left, int right, int high) {
        double x = 0;
        double y = 0;
        int n = 0;
        int bad = 0;
        for (int c = left; c <= right; c++) {
            if (first[c] > high + Math.max(1, 0.015 * d)) {
                continue;
            }
            double above = level(c, first[c] - Math.max(3, 0.06 * d));
            double inside = level(c, first[c] + Math.max(3, 0.06 * d));
            if (above - inside < LEAST_STEP) {
                bad++;
                continue;
            }
            x += c;
            y += edge(c, first[c], (above + inside) / 2);
            n++;
        }
        if (n == 0 || bad > n) {
            return Optional.empty();
        }
        double sigma = Math.max(LEAST_SIGMA_PX, SIGMA * d);
        return Optional.of(
                new Mark(Landmark.CROWN, new ImagePoint(x0 + x / n + 0.5, y0 + y / n), sigma, Mark.Origin.SUGGESTED));
    }

    private double level(int x, double y) {
        return (grey(x, (int) y) + grey(x, (int) y - 1) + grey(x, (int) y + 1)) / 3;
    }

    /** Where a column crosses a level near a pixel, from above. */
    private double edge(int x, int near, double level) {
        int from = near - (int) Math.max(3, 0.06 * d);
        for (int y = from; y < near + 3; y++) {
            double a = grey(x, y);
            double b = grey(x, y + 1);
            if (a > level && b <= level) {
                return y + 0.5 + (a - level) / (a - b);
            }
        }
        return near;
    }
}
