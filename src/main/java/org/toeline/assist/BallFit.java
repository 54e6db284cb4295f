package org.toeline.assist;

import java.util.Arrays;
import org.hipparchus.exception.MathRuntimeException;
import org.toeline.assist.BallPatch.Pixel;
import org.toeline.assist.LeastSquares.Rows;

/**
 * Fits {@link BallModel} to a patch of picture by least squares, over and over: pixels that fit neither ball nor ground (a
 * mark on the ball, the club head) lose their weight, parts of the {@link Rim} that are covered are closed, and the noise is
 * taken from what is left, apart for ball and ground, as the ground has a texture.
 */
final class BallFit {

    private static final int ROUNDS = 10;
    private static final int STEPS = 3;
    private static final double AT_REST_PX = 0.03;
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

    private static final double ODDEST = 9;
    /** How far a rim may be from where a lens would draw it, from pixel to pixel: sharpening, coding, coarse sampling. */
    private static final double RAGGED_PX = 0.15;
    /** At first misfits of this many grey levels are ordinary: the shade of a ball is not known yet. */
    private static final double SOFT = 40;

    private static final double DARKER = 0.5;
    private static final double EXPLAINED = 1.35;
    /** How far behind a cover's edge its light is one and the same, pixels. */
    private static final double COVER_PX = 2.5;

    private final BallPatch patch;
    private final BallModel model;
    private final Rim rim;
    private final double innerPx;
    private final Circle start;
    private double[] v;
    private double noise = 8;
    private double groundNoise = 10;
    private double[] misfit;
    private double[] weight;
    private Rows rows = (at, sums) -> {};

    /** Where a cover is first thought to be: the direction to it, and how far beyond the patch's middle it begins. */
    record Cover(double angleRad, double offPx) {}

    /** Without a cover. */
    BallFit(BallPatch patch, Circle start, boolean[] open, double gamma) {
        this(patch, start, open, new BallModel(open.length, gamma, patch.about, false));
        begin();
    }

    /** Behind one. */
    BallFit(BallPatch patch, Circle start, boolean[] open, double gamma, Cover cover) {
        this(patch, start, open, new BallModel(open.length, gamma, patch.about, true));
        v[model.cover()] = cover.angleRad;
        v[model.cover() + 1] = cover.offPx;
        begin();
    }

    private BallFit(BallPatch patch, Circle start, boolean[] open, BallModel model) {
        this.patch = patch;
        this.start = start;
        this.model = model;
        this.rim = new Rim(open);
        this.innerPx = Math.max(0, start.r() - Math.max(BAND_PX, BAND_SHARE * start.r()));
        this.misfit = new double[patch.pixels.size()];
        this.weight = new double[patch.pixels.size()];
        v = new double[model.values()];
        v[0] = start.x();
        v[1] = start.y();
        v[2] = start.r();
        v[3] = BallPriors.USUAL_BLUR;
        model.set(v);
    }

    /** The same with other pixels or another exponent of encoding, from where this one ended. */
    BallFit again(BallPatch of, double gamma) {
        return model.covered
                ? new BallFit(of, circle(), rim.open(), gamma, cover(of.about))
                : new BallFit(of, circle(), rim.open(), gamma);
    }

    /** Plain first values: the ball as bright as the brighter part of what is inside, the ground as just outside. */
    private void begin() {
        v[BallModel.SHAPE] = middling(p -> depth(p) > 1.5 && rim.open(sector(p)) && past(p) < -1, 2.0 / 3, 0.5);
        for (int k = 0; k < rim.sectors; k++) {
            int at = k;
            v[BallModel.SHAPE + BallModel.LIGHT + k] = middling(
                    p -> depth(p) < -1.5 && depth(p) > -GROUND_PX && sector(p) == at && past(p) < -1, 0.5, 0.2);
        }
        if (model.covered) {
            v[model.cover() + 2] = middling(p -> depth(p) > -GROUND_PX && past(p) > 1 && past(p) < COVER_PX, 0.5, 0.1);
        }
    }

    private double middling(java.util.function.Predicate<Pixel> of, double at, double otherwise) {
        double[] lights = patch.pixels.stream()
                .filter(of)
                .mapToDouble(p -> model.light(p.level()))
                .sorted()
                .toArray();
        return lights.length == 0 ? otherwise : lights[(int) (lights.length * at)];
    }

    /** How far inside the rim, pixels. */
    private double depth(Pixel p) {
        return v[2] - Math.hypot(p.middleX() - v[0], p.middleY() - v[1]);
    }

    private double past(Pixel p) {
        return model.past(p.middleX(), p.middleY());
    }

    private int sector(Pixel p) {
        return Rim.sector(Math.atan2(p.middleY() - v[1], p.middleX() - v[0]), rim.sectors);
    }

    /** The misfit when lights and cover are fitted to the circle it began with, or more than any when they cannot be. */
    double tried(double noiseUnit, double groundUnit) {
        weigh(SOFT);
        return step(true) ? misfit(patch, noiseUnit, groundUnit) : Double.POSITIVE_INFINITY;
    }

    /** Whether it came to rest near where it began, on numbers. */
    boolean run() {
        for (int round = 0; round < ROUNDS; round++) {
            weigh(SOFT * Math.pow(0.4, round));
            double[] before = v;
            if (!step(round == 0) || lost()) {
                return false;
            }
            look(round > 1);
            double moved = Math.abs(v[0] - before[0]) + Math.abs(v[1] - before[1]) + Math.abs(v[2] - before[2]);
            if (round > 3 && moved < AT_REST_PX) {
                break;
            }
        }
        return true;
    }

    private boolean lost() {
        return !(v[2] > 2.5)
                || Math.abs(v[2] - start.r()) > 2 + 0.35 * start.r()
                || Math.hypot(v[0] - start.x(), v[1] - start.y()) > 2 + 0.35 * start.r()
                || Arrays.stream(v).anyMatch(d -> !Double.isFinite(d));
    }

    /** Whether a pixel counts at all. */
    private boolean counts(Pixel p, double depth) {
        return depth > -GROUND_PX
                && depth < v[2] - innerPx + 1e-9
                && (depth > 2 || rim.open(sector(p)) || covering(p))
                && past(p) < COVER_PX;
    }

    private boolean covering(Pixel p) {
        return model.covered && past(p) > -1;
    }

    /** What each pixel weighs: one over its noise, and less the odder it is. */
    private void weigh(double leastNoise) {
        double[] rates = new double[v.length];
        for (int i = 0; i < misfit.length; i++) {
            Pixel p = patch.pixels.get(i);
            misfit[i] = p.level() - model.level(p.middleX(), p.middleY(), rates);
            double own = Math.hypot(Math.max(leastNoise, noise(model.ball())), RAGGED_PX * rates[2]);
            double odd = misfit[i] / (ODD * own);
            double depth = depth(p);
            double share = depth > DEEP_PX && start.r() > SMALL_PX ? DEEP : 1;
            weight[i] = counts(p, depth) ? share / ((1 + odd * odd) * (1 + odd * odd) * own * own) : 0;
        }
    }

    private double noise(double ball) {
        return Math.sqrt(ball * noise * noise + (1 - ball) * groundNoise * groundNoise);
    }

    private boolean step(boolean onlyLight) {
        BallPriors priors = new BallPriors(v, model, onlyLight);
        rows = (at, sums) -> {
            model.set(kept(at));
            addPixels(sums);
            priors.add(at, sums);
        };
        try {
            v = LeastSquares.down(v, rows, STEPS);
            model.set(v);
            return true;
        } catch (MathRuntimeException e) {
            return false;
        }
    }

    /** Within what can be drawn. */
    private static double[] kept(double[] at) {
        at[2] = Math.max(2.5, at[2]);
        at[3] = Math.max(Math.log(0.25), Math.min(Math.log(2.2), at[3]));
        return at;
    }

    private void addPixels(LeastSquares sums) {
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
    private void look(boolean gate) {
        double[] rates = new double[v.length];
        for (int i = 0; i < misfit.length; i++) {
            Pixel p = patch.pixels.get(i);
            misfit[i] = p.level() - model.level(p.middleX(), p.middleY(), rates);
        }
        noise = Math.max(LEAST_NOISE, spread(1, Double.POSITIVE_INFINITY, noise));
        groundNoise = Math.max(LEAST_NOISE, spread(-GROUND_PX, -1, groundNoise));
        if (gate) {
            rim.look(patch.pixels, misfit, noise, v, model);
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

    Circle circle() {
        return new Circle(v[0], v[1], v[2]);
    }

    private Cover cover(Circle from) {
        double angle = v[model.cover()];
        return new Cover(
                angle,
                v[model.cover() + 1]
                        + (patch.about.x() - from.x()) * Math.cos(angle)
                        + (patch.about.y() - from.y()) * Math.sin(angle));
    }

    BallPatch patch() {
        return patch;
    }

    Rim rim() {
        return rim;
    }

    double noise() {
        return noise;
    }

    double groundNoise() {
        return groundNoise;
    }

    double blurPx() {
        return Math.exp(v[3]);
    }

    int values() {
        return model.values();
    }

    /** The ground beside a sector, grey levels. */
    double ground(int sector) {
        return model.shown(model.ground(sector));
    }

    /**
     * Standard deviation of the centre (the larger of the two directions) and of the radius, pixels; infinite when the picture
     * does not say where they are.
     */
    double[] sigmas() {
        try {
            return new BallSpread(patch, model, LeastSquares.at(v, rows).covariance(), weight, misfit).sigmas();
        } catch (MathRuntimeException e) {
            return new double[] {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        }
    }

    /**
     * Misfit of a whole patch in units of noises: bounded for each pixel, so that what is neither ball nor ground does not
     * decide.
     */
    double misfit(BallPatch over, double noiseUnit, double groundUnit) {
        double sum = 0;
        double[] rates = new double[v.length];
        for (Pixel p : over.pixels) {
            double e = p.level() - model.level(p.middleX(), p.middleY(), rates);
            double unit = model.ball() * noiseUnit * noiseUnit + (1 - model.ball()) * groundUnit * groundUnit;
            sum += Math.min(e * e / unit, ODDEST);
        }
        return sum;
    }

    /** Whether a cover, if there is one, is darker than the ball and hides a part of it and not all. */
    boolean plausible() {
        if (!model.covered) {
            return true;
        }
        double past = model.past(v[0], v[1]) / v[2];
        return past > -0.85 && past < 0.5 && v[model.cover() + 2] < DARKER * v[BallModel.SHAPE];
    }

    /** Whether hardly anything in its patch is left unexplained. */
    boolean explains() {
        return misfit(patch, noise, groundNoise) < EXPLAINED * patch.pixels.size();
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
}
