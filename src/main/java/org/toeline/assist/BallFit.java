package org.toeline.assist;

import java.util.Arrays;
import org.hipparchus.exception.MathRuntimeException;
import org.toeline.assist.BallPatch.Pixel;
import org.toeline.assist.LeastSquares.Rows;

/**
 * Fits {@link BallModel} to a patch of picture by least squares, over and over: {@link BallPixels} that fit neither ball nor
 * ground (a mark on the ball, the club head) lose their weight, and parts of the {@link Rim} that are covered are closed.
 */
final class BallFit {

    private static final int ROUNDS = 10;
    private static final int STEPS = 3;
    private static final double AT_REST_PX = 0.03;
    /** In units of noise, squared: an odder pixel counts no more than this in the misfit of a whole patch. */
    private static final double ODDEST = 9;
    /** At first misfits of this many grey levels are ordinary: the shade of a ball is not known yet. */
    private static final double SOFT = 40;

    private static final double DARKER = 0.5;
    private static final double EXPLAINED = 1.35;
    private final BallPatch patch;
    private final BallModel model;
    private final Rim rim;
    private final BallPixels pixels;
    private final Circle start;
    private double[] v;
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
        this.pixels = new BallPixels(patch, model, rim, start.r());
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
        v[BallModel.SHAPE] = pixels.ballLight();
        for (int k = 0; k < rim.sectors; k++) {
            v[BallModel.SHAPE + BallModel.LIGHT + k] = pixels.groundLight(k);
        }
        if (model.covered) {
            v[model.cover() + 2] = pixels.coverLight();
        }
    }

    /** The misfit when lights and cover are fitted to the circle it began with, or more than any when they cannot be. */
    double tried(double noiseUnit, double groundUnit) {
        pixels.weigh(SOFT);
        return step(true) ? misfit(patch, noiseUnit, groundUnit) : Double.POSITIVE_INFINITY;
    }

    /** Whether it came to rest near where it began, on numbers. */
    boolean run() {
        for (int round = 0; round < ROUNDS; round++) {
            pixels.weigh(SOFT * Math.pow(0.4, round));
            double[] before = v;
            if (!step(round == 0) || lost()) {
                return false;
            }
            pixels.look(round > 1);
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

    private boolean step(boolean onlyLight) {
        BallPriors priors = new BallPriors(v, model, onlyLight);
        rows = (at, sums) -> {
            model.set(kept(at));
            pixels.add(sums);
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
        return pixels.noise();
    }

    double groundNoise() {
        return pixels.groundNoise();
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
            return new BallSpread(patch, model, LeastSquares.at(v, rows).covariance(), pixels.weight, pixels.misfit)
                    .sigmas();
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
        return misfit(patch, noise(), groundNoise()) < EXPLAINED * patch.pixels.size();
    }

    /** Usual misfit at the open rim, grey levels. */
    double rimMisfit() {
        return pixels.rimMisfit();
    }
}
