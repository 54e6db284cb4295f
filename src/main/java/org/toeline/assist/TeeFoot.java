package org.toeline.assist;

import java.util.Arrays;
import java.util.Optional;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.video.Frame;

/**
 * Where the tee under a ball enters the ground: a thin upright thing, redder than the ground to both of its sides, from the
 * ball's underside down to where it ends. Lengths are of the ball's diameter.
 */
final class TeeFoot {

    private static final double HALF_WIDTH = 0.035;
    private static final double BESIDE = 0.3;
    /** It leans no more than a camera does. */
    private static final double ASIDE = 0.07;

    private static final double LONGEST = 1.6;
    private static final double SHORTEST = 0.12;
    /** A rod that passes behind it is as red. */
    private static final double GAP = 0.22;
    /** Redder than the ground by this, levels of 255, and by this share of what the tee's middle is. */
    private static final double LEAST_REDDER = 14;

    private static final double OF_USUAL = 0.4;
    private static final double SIGMA = 0.05;
    private static final double LEAST_SIGMA_PX = 1.0;

    private final Frame frame;
    private final BallMark ball;
    private final double d;

    TeeFoot(Frame frame, BallMark ball) {
        this.frame = frame;
        this.ball = ball;
        this.d = TeeSuggester.diameter(ball);
    }

    Optional<Mark> find() {
        double top = ball.centre().yPx() + 0.53 * d;
        int rows = (int) Math.min(LONGEST * d, frame.height() - top - 2);
        double[] redder = new double[Math.max(0, rows)];
        double[] at = new double[redder.length];
        double x = ball.centre().xPx();
        for (int i = 0; i < redder.length; i++) {
            double best = Double.NEGATIVE_INFINITY;
            double bestX = x;
            for (double dx = -ASIDE * d; dx <= ASIDE * d; dx += 0.5) {
                double r = redder(ball.centre().xPx() + dx, top + i);
                if (r > best) {
                    best = r;
                    bestX = ball.centre().xPx() + dx;
                }
            }
            redder[i] = best;
            at[i] = bestX;
        }
        int end = end(redder);
        if (end < SHORTEST * d || end > redder.length - 3) {
            return Optional.empty();
        }
        double sigma = Math.max(LEAST_SIGMA_PX, SIGMA * d);
        double foot = Arrays.stream(at, Math.max(0, end - 6), end + 1).average().orElse(x);
        return Optional.of(
                new Mark(Landmark.GROUND, new ImagePoint(foot, top + end + 0.5), sigma, Mark.Origin.SUGGESTED));
    }

    /** The last row of it that hangs together with its first ones. */
    private int end(double[] redder) {
        int first = (int) (0.1 * d);
        if (redder.length < 2 * first + 4) {
            return 0;
        }
        double[] upper = Arrays.copyOfRange(redder, 0, Math.max(4, first));
        Arrays.sort(upper);
        double usual = upper[upper.length / 2];
        if (usual < LEAST_REDDER) {
            return 0;
        }
        int end = 0;
        for (int i = 0; i < redder.length && i - end <= Math.max(2, GAP * d); i++) {
            end = redder[i] > OF_USUAL * usual ? i : end;
        }
        return end;
    }

    /** By how much a place is redder, against green, than what lies to its sides. */
    private double redder(double x, double y) {
        double on = 0;
        int n = 0;
        for (double dx = -HALF_WIDTH * d; dx <= HALF_WIDTH * d; dx += 0.5) {
            on += redness(x + dx, y);
            n++;
        }
        double left = 0;
        double right = 0;
        for (int i = 0; i < 6; i++) {
            left += redness(x - (BESIDE + 0.02 * i) * d, y) / 6;
            right += redness(x + (BESIDE + 0.02 * i) * d, y) / 6;
        }
        return on / n - Math.max(left, right);
    }

    private double redness(double x, double y) {
        int px = (int) Math.max(0, Math.min(frame.width() - 1.0, Math.floor(x)));
        int py = (int) Math.max(0, Math.min(frame.height() - 1.0, Math.floor(y)));
        int p = frame.argb()[py * frame.width() + px];
        return (p >> 16 & 255) - (p >> 8 & 255);
    }
}
