package org.toeline.assist;

import java.util.Arrays;
import java.util.function.Predicate;
import org.toeline.assist.BallPatch.Pixel;

/**
 * The pixels of a patch while a ball is fitted to them: where each lies by the model's present values, how far it is from
 * what the model says, and what it weighs. The noise is taken from what is left unexplained, apart for ball and ground.
 */
final class BallPixels {

    static final double GROUND_PX = 4;
    /** How deep inside the rim the ball's light is looked at, pixels, and at least what share of the radius. */
    private static final double BAND_PX = 11;

    private static final double BAND_SHARE = 0.4;
    /**
     * Deeper than this in a ball of some size nothing tells where the rim is, and shade that the light's few terms cannot
     * follow would move it: such pixels count for less.
     */
    private static final double DEEP_PX = 3;

    private static final double DEEP = 0.15;
    /** Of a ball this small everything is needed. */
    private static final double SMALL_PX = 6.5;

    private static final double LEAST_NOISE = 1.5;
    /** Misfits beyond about this many times the noise are no noise. */
    private static final double ODD = 3;

    /** How far a rim may be from where a lens would draw it, from pixel to pixel: sharpening, coding, coarse sampling. */
    private static final double RAGGED_PX = 0.15;
    /** How far behind a cover's edge its light is one and the same, pixels. */
    private static final double COVER_PX = 2.5;

    final double[] misfit;
    final double[] weight;
    private final BallPatch patch;
    private final BallModel model;
    private final Rim rim;
    private final double startPx;
    private final double innerPx;
    private double noise = 8;
    private double groundNoise = 10;

    /** @param startPx radius of the circle that the fit began with */
    BallPixels(BallPatch patch, BallModel model, Rim rim, double startPx) {
        this.patch = patch;
        this.model = model;
        this.rim = rim;
        this.startPx = startPx;
        this.innerPx = Math.max(0, startPx - Math.max(BAND_PX, BAND_SHARE * startPx));
        this.misfit = new double[patch.pixels.size()];
        this.weight = new double[patch.pixels.size()];
    }

    /** The light of the ball before any fit: of the brighter part of what is inside. */
    double ballLight() {
        return middling(p -> depth(p) > 1.5 && rim.open(sector(p)) && past(p) < -1, 2.0 / 3, 0.5);
    }

    /** The light of the ground just outside of a sector before any fit. */
    double groundLight(int of) {
        return middling(p -> depth(p) < -1.5 && depth(p) > -GROUND_PX && sector(p) == of && past(p) < -1, 0.5, 0.2);
    }

    /** The light of a cover before any fit, just behind its edge. */
    double coverLight() {
        return middling(p -> depth(p) > -GROUND_PX && past(p) > 1 && past(p) < COVER_PX, 0.5, 0.1);
    }

    private double middling(Predicate<Pixel> of, double at, double otherwise) {
        double[] lights = patch.pixels.stream()
                .filter(of)
                .mapToDouble(p -> model.light(p.level()))
                .sorted()
                .toArray();
        return lights.length == 0 ? otherwise : lights[(int) (lights.length * at)];
    }

    private double depth(Pixel p) {
        return model.depth(p.middleX(), p.middleY());
    }

    private double past(Pixel p) {
        return model.past(p.middleX(), p.middleY());
    }

    private int sector(Pixel p) {
        return model.sector(p.middleX(), p.middleY());
    }

    /** Whether a pixel counts at all. */
    private boolean counts(Pixel p, double depth) {
        return depth > -GROUND_PX
                && depth < model.radius() - innerPx + 1e-9
                && (depth > 2 || rim.open(sector(p)) || covering(p))
                && past(p) < COVER_PX;
    }

    private boolean covering(Pixel p) {
        return model.covered && past(p) > -1;
    }

    /** What each pixel weighs: one over its noise, and less the odder it is. */
    void weigh(double leastNoise) {
        double[] rates = new double[model.values()];
        for (int i = 0; i < misfit.length; i++) {
            Pixel p = patch.pixels.get(i);
            misfit[i] = p.level() - model.level(p.middleX(), p.middleY(), rates);
            double own = Math.hypot(Math.max(leastNoise, noise(model.ball())), RAGGED_PX * rates[2]);
            double odd = misfit[i] / (ODD * own);
            double depth = depth(p);
            double share = depth > DEEP_PX && startPx > SMALL_PX ? DEEP : 1;
            weight[i] = counts(p, depth) ? share / ((1 + odd * odd) * (1 + odd * odd) * own * own) : 0;
        }
    }

    private double noise(double ball) {
        return Math.sqrt(ball * noise * noise + (1 - ball) * groundNoise * groundNoise);
    }

    /** A row for each that weighs anything. */
    void add(LeastSquares sums) {
        double[] rates = new double[sums.values];
        int[] which = model.which();
        for (int i = 0; i < weight.length; i++) {
            if (weight[i] > 0) {
                Pixel p = patch.pixels.get(i);
                double off = p.level() - model.level(p.middleX(), p.middleY(), rates);
                sums.row(off, weight[i], rates, which, which.length);
            }
        }
    }

    /** Takes stock: misfits, the rim, the noise. */
    void look(boolean gate) {
        double[] rates = new double[model.values()];
        for (int i = 0; i < misfit.length; i++) {
            Pixel p = patch.pixels.get(i);
            misfit[i] = p.level() - model.level(p.middleX(), p.middleY(), rates);
        }
        noise = Math.max(LEAST_NOISE, spread(1, Double.POSITIVE_INFINITY, noise));
        groundNoise = Math.max(LEAST_NOISE, spread(-GROUND_PX, -1, groundNoise));
        if (gate) {
            rim.look(patch.pixels, misfit, noise, model);
        }
    }

    /** Of the misfits at depths, at the open rim, by the middle of their sizes; another one where there are few. */
    private double spread(double from, double to, double otherwise) {
        double[] sizes = new double[misfit.length];
        int n = 0;
        for (int i = 0; i < misfit.length; i++) {
            Pixel p = patch.pixels.get(i);
            double depth = depth(p);
            if (depth > from && depth < to && weight[i] > 0 && rim.open(sector(p)) && past(p) < -1) {
                sizes[n++] = Math.abs(misfit[i]);
            }
        }
        Arrays.sort(sizes, 0, n);
        return n < 8 ? otherwise : 1.48 * sizes[n / 2];
    }

    /** Usual misfit at the open rim, grey levels: the mean size, so that an edge in the ground does not decide. */
    double rimMisfit() {
        double sum = 0;
        int n = 0;
        for (int i = 0; i < misfit.length; i++) {
            Pixel p = patch.pixels.get(i);
            if (Math.abs(depth(p)) < 2.5 && rim.open(sector(p)) && past(p) < -1) {
                sum += Math.abs(misfit[i]);
                n++;
            }
        }
        return n == 0 ? 255 : 1.25 * sum / n;
    }

    double noise() {
        return noise;
    }

    double groundNoise() {
        return groundNoise;
    }
}
