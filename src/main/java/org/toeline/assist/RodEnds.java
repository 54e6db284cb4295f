package org.toeline.assist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.toeline.assist.SnappedRod.Beyond;
import org.toeline.assist.SnappedRod.End;

/**
 * Finds where a bar stops along its axis: how far its colour stands off the ground beside it, over how far it does in
 * general, falls through one half.
 */
final class RodEnds {

    private static final int PLACES = 40;
    private static final double STEP_PX = 0.5;
    /** How long the ground must go on beyond an end, pixels. */
    private static final double BEYOND_PX = 5;
    /** What the shape of an end and the blur leave uncertain, pixels. */
    private static final double SHAPE_PX = 0.3;
    /** Where the ground beside the end changes by more than this share of the rod's contrast, something covers it. */
    private static final double COVER_SHARE = 0.45;

    /** So many times further from the ground's usual colour than the ground beside the rod itself is another thing. */
    private static final double CROSSES = 4;
    /** The middle of what crosses lies no further past the end than this: beyond, there is ground between them. */
    private static final double JUST_PAST_PX = 1.5;
    /** What coding leaves of a plain ground, levels of 255. */
    private static final double PLAIN = 4;

    private final Strip strip;
    private final double width;
    private final double[] rod;
    private final Flank left;
    private final Flank right;

    /** The ground along one side of the rod: its usual colour, and how far it is from that in general. */
    private record Flank(double fromT, double toT, double[] usual, double rough) {}

    RodEnds(Colours colours, StraightLine axis, double width, double fromS, double toS) {
        this.strip = new Strip(colours, axis);
        this.width = width;
        double half = width / 2;
        rod = usual(fromS, toS, -half / 2, half / 2);
        left = flank(fromS, toS, -half - 3.5, -half - 1.5);
        right = flank(fromS, toS, half + 1.5, half + 3.5);
    }

    private Flank flank(double fromS, double toS, double fromT, double toT) {
        double[] usual = usual(fromS, toS, fromT, toT);
        double[] off = new double[PLACES];
        for (int i = 0; i < PLACES; i++) {
            off[i] = LineSearch.distance(smooth(place(fromS, toS, i), fromT, toT), usual);
        }
        Arrays.sort(off);
        return new Flank(fromT, toT, usual, Math.max(PLAIN, off[PLACES / 2]));
    }

    /** The median of each of the three along a stretch. */
    private double[] usual(double fromS, double toS, double fromT, double toT) {
        double[][] colours = new double[3][PLACES];
        for (int i = 0; i < PLACES; i++) {
            double[] c = strip.at(place(fromS, toS, i), fromT, toT);
            for (int k = 0; k < 3; k++) {
                colours[k][i] = c[k];
            }
        }
        double[] usual = new double[3];
        for (int k = 0; k < 3; k++) {
            Arrays.sort(colours[k]);
            usual[k] = colours[k][PLACES / 2];
        }
        return usual;
    }

    private static double place(double fromS, double toS, int i) {
        return fromS + (i + 0.5) / PLACES * (toS - fromS);
    }

    /** The mean over a pixel and a half along the rod. */
    private double[] smooth(double s, double fromT, double toT) {
        double[] mean = new double[3];
        for (int i = -1; i <= 1; i++) {
            double[] c = strip.at(s + i * STEP_PX, fromT, toT);
            for (int k = 0; k < 3; k++) {
                mean[k] += c[k] / 3;
            }
        }
        return mean;
    }

    /**
     * The end nearest to a rough one.
     *
     * @param way 1 when the rod stops towards larger s, −1 when towards smaller
     */
    Optional<End> near(StraightLine axis, double roughS, int way, double reach) {
        int n = (int) (2 * reach / STEP_PX) + (int) (2 * BEYOND_PX / STEP_PX);
        double[] stand = new double[n];
        for (int i = 0; i < n; i++) {
            stand[i] = stand(s(roughS, way, reach, i));
        }
        int best = -1;
        int beyond = (int) (BEYOND_PX / STEP_PX);
        for (int i = 1; i + beyond < n; i++) {
            if (stand[i - 1] >= 0.5
                    && stand[i] < 0.5
                    && quiet(stand, i + 2, i + beyond)
                    && (best < 0
                            || Math.abs(s(roughS, way, reach, i) - roughS)
                                    < Math.abs(s(roughS, way, reach, best) - roughS))) {
                best = i;
            }
        }
        if (best < 0) {
            return Optional.empty();
        }
        double half = plateau(stand, best) / 2;
        int i = best;
        while (i > 1 && stand[i - 1] < half) {
            i--;
        }
        while (i + 1 < n && stand[i] >= half) {
            i++;
        }
        double between = (stand[i - 1] - half) / Math.max(1e-6, stand[i - 1] - stand[i]);
        double s = s(roughS, way, reach, i - 1 + between);
        double sigma = Math.hypot(SHAPE_PX, rough(stand, i + 2, i + beyond) / slope(stand, i));
        return Optional.of(new End(axis.at(s, 0), sigma, beyond(s, way)));
    }

    private static double s(double roughS, int way, double reach, double i) {
        return roughS + way * (i * STEP_PX - reach);
    }

    private double[] inside(double s) {
        return strip.at(s, -width / 4, width / 4);
    }

    private double[] ground(double s) {
        double[] left = strip.at(s, -width / 2 - 3.5, -width / 2 - 1.5);
        double[] right = strip.at(s, width / 2 + 1.5, width / 2 + 3.5);
        return new double[] {(left[0] + right[0]) / 2, (left[1] + right[1]) / 2, (left[2] + right[2]) / 2};
    }

    /** How far the colour on the axis stands off the ground beside it; 1 as on the rod, 0 as the ground. */
    private double stand(double s) {
        double[] ground = ground(s);
        return LineSearch.distance(inside(s), ground) / Math.max(10, LineSearch.distance(rod, ground));
    }

    private static boolean quiet(double[] stand, int from, int to) {
        for (int i = from; i < to; i++) {
            if (stand[i] > 0.5) {
                return false;
            }
        }
        return true;
    }

    /** How far it stands off just inside the end. */
    private static double plateau(double[] stand, int end) {
        double sum = 0;
        int n = 0;
        for (int i = Math.max(0, end - (int) (6 / STEP_PX)); i < end - 1.5 / STEP_PX; i++) {
            sum += stand[i];
            n++;
        }
        return n == 0 ? 1 : Math.max(0.6, Math.min(1.4, sum / n));
    }

    private static double rough(double[] stand, int from, int to) {
        double mean = 0;
        for (int i = from; i < to && i < stand.length; i++) {
            mean += stand[i] / (to - from);
        }
        return Math.max(0.02, mean / 2);
    }

    private static double slope(double[] stand, int i) {
        int a = Math.max(0, i - 2);
        int b = Math.min(stand.length - 1, i + 1);
        return Math.max(0.05, (stand[a] - stand[b]) / ((b - a) * STEP_PX));
    }

    private Beyond beyond(double s, int way) {
        double[] before = ground(s - way * 3.0);
        double[] after = ground(s + way * 3.0);
        double over = Math.max(10, LineSearch.distance(rod, before));
        boolean covered = LineSearch.distance(before, after) > COVER_SHARE * over;
        return covered || crossed(s, way) ? Beyond.COVER : Beyond.GROUND;
    }

    /**
     * Whether something lies across the rod where it seems to end: a shaft or another rod that is seen on both sides of it. The
     * rod may then end before that thing or go on behind it, and what stands off the ground there is not the rod.
     */
    private boolean crossed(double s, int way) {
        for (double a : strange(left, s)) {
            for (double b : strange(right, s)) {
                double past = way * ((a + b) / 2 - s);
                if (past > -width - BEYOND_PX && past < JUST_PAST_PX) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The middles of what is not the ground beside the rod, about an end. */
    private List<Double> strange(Flank flank, double s) {
        double reach = width + 2 * BEYOND_PX;
        List<Double> middles = new ArrayList<>();
        double from = Double.NaN;
        for (double at = s - reach; at <= s + reach; at += STEP_PX) {
            boolean other =
                    LineSearch.distance(smooth(at, flank.fromT, flank.toT), flank.usual) > CROSSES * flank.rough;
            if (other && Double.isNaN(from)) {
                from = at;
            } else if (!other && !Double.isNaN(from)) {
                middles.add((from + at - STEP_PX) / 2);
                from = Double.NaN;
            }
        }
        return middles;
    }
}
