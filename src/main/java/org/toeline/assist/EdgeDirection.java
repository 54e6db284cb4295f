package org.toeline.assist;

import java.util.ArrayList;
import java.util.List;
import org.toeline.geometry.ImagePoint;

/** Guesses which lines run near a click: each pixel around it votes for the line through it along its own edge (Hough). */
final class EdgeDirection {

    private static final int ANGLES = 60;
    private static final double HALF_PX = 16;
    /** Weaker changes of colour do not vote, levels per pixel. */
    private static final double LEAST_SLOPE = 6;

    private static final double MOST_SLOPE = 30;
    private static final int MOST_GUESSES = 4;
    private static final double LEAST_VOTES = 8 * LEAST_SLOPE;

    private EdgeDirection() {}

    /** The best guesses, best first, each with its origin where the click drops onto it. */
    static List<StraightLine> at(Colours colours, ImagePoint near, double reach) {
        int offsets = 2 * (int) Math.ceil(reach) + 1;
        double[][] votes = new double[ANGLES][offsets];
        int half = (int) (HALF_PX + reach);
        for (int dy = -half; dy <= half; dy++) {
            for (int dx = -half; dx <= half; dx++) {
                vote(colours, near, dx, dy, votes);
            }
        }
        List<StraightLine> guesses = new ArrayList<>();
        while (guesses.size() < MOST_GUESSES) {
            int best = best(votes, reach);
            int angle = best / offsets;
            int offset = best % offsets;
            if (votes[angle][offset] < LEAST_VOTES) {
                break;
            }
            double rad = Math.PI * angle / ANGLES;
            double t = offset - offsets / 2;
            guesses.add(new StraightLine(near.plus(-t * Math.sin(rad), t * Math.cos(rad)), rad));
            clear(votes, angle, offset);
        }
        return guesses;
    }

    private static void vote(Colours colours, ImagePoint near, int dx, int dy, double[][] votes) {
        int x = (int) Math.floor(near.xPx()) + dx;
        int y = (int) Math.floor(near.yPx()) + dy;
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int which = 0; which < 3; which++) {
            double gx = slope(colours, x, y, 1, 0, which);
            double gy = slope(colours, x, y, 0, 1, which);
            xx += gx * gx;
            xy += gx * gy;
            yy += gy * gy;
        }
        double size = Math.sqrt((xx + yy + Math.hypot(xx - yy, 2 * xy)) / 2);
        if (size < LEAST_SLOPE) {
            return;
        }
        // the edge runs across the steepest change of colour
        double along = 0.5 * Math.atan2(2 * xy, xx - yy) + Math.PI / 2;
        double weight = Math.min(size, MOST_SLOPE);
        for (int turn = -1; turn <= 1; turn++) {
            int angle = Math.floorMod((int) Math.round(along / Math.PI * ANGLES) + turn, ANGLES);
            double rad = Math.PI * angle / ANGLES;
            double px = x + 0.5 - near.xPx();
            double py = y + 0.5 - near.yPx();
            double s = px * Math.cos(rad) + py * Math.sin(rad);
            int offset = (int) Math.round(py * Math.cos(rad) - px * Math.sin(rad)) + votes[0].length / 2;
            if (Math.abs(s) <= HALF_PX && offset >= 0 && offset < votes[0].length) {
                votes[angle][offset] += weight * (turn == 0 ? 1 : 0.6);
            }
        }
    }

    /** Over three by three pixels, after Sobel; levels per pixel. */
    private static double slope(Colours colours, int x, int y, int alongX, int alongY, int which) {
        double sum = 0;
        for (int k = -1; k <= 1; k++) {
            int ox = alongY * k;
            int oy = alongX * k;
            sum += (2 - Math.abs(k))
                    * (colours.of(x + alongX + ox, y + alongY + oy, which)
                            - colours.of(x - alongX + ox, y - alongY + oy, which));
        }
        return sum / 8;
    }

    private static int best(double[][] votes, double reach) {
        int offsets = votes[0].length;
        double most = -1;
        int best = 0;
        for (int a = 0; a < ANGLES; a++) {
            for (int o = 0; o < offsets; o++) {
                double off = (o - offsets / 2) / (0.7 * reach);
                double score = votes[a][o] * Math.exp(-off * off / 2);
                if (score > most) {
                    most = score;
                    best = a * offsets + o;
                }
            }
        }
        return best;
    }

    private static void clear(double[][] votes, int angle, int offset) {
        for (int a = -3; a <= 3; a++) {
            for (int o = -2; o <= 2; o++) {
                if (offset + o >= 0 && offset + o < votes[0].length) {
                    votes[Math.floorMod(angle + a, ANGLES)][offset + o] = 0;
                }
            }
        }
    }
}
