package org.toeline.assist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.assist.ShaftSearch.Shaft;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/**
 * The ball without a click: the whitest discs of about the right size where the shaft ends, each fitted by
 * {@link BallOutline}. How large a ball must be follows from the player's own size.
 */
final class BallSearch {

    /** A ball's 42.67 mm over some 1.5 m from nose to soles at address, a little nearer to the camera; for a child twice that. */
    private static final double LEAST_SHARE = 0.024;

    private static final double MOST_SHARE = 0.052;
    /** How far the ball may lie from where the shaft is last seen, as a share of the span; half of it above. */
    private static final double REACH = 0.16;

    private static final int MOST_TRIED = 4;
    /** So much whiter than around it, levels of 255: less is no ball that a person would see. */
    private static final double LEAST_WHITER = 18;

    /** And the centre no further off than this: the furthest met is 0.108. */
    private static final double FURTHEST = 0.115;
    /** An outline worse known than this share of its diameter is none. */
    private static final double LEAST_SURE = 0.12;

    private static final double ON_THE_SHAFT = 0.6;
    /** Nearer to a foot it is a sock or a shoe: of 600 drawn players the nearest ball lay 0.062 off, face-on. */
    private static final double AROUND_FEET = 0.05;

    /** What is so much less white than the whitest is not tried. */
    private static final double LESS_WHITE = 0.3;

    private record Disc(ImagePoint at, double whiter) {}

    private final Frame frame;
    private final View view;
    private final double focalPx;

    BallSearch(Frame frame, View view, double focalPx) {
        this.frame = frame;
        this.view = view;
        this.focalPx = focalPx;
    }

    /**
     * All that could be it, each only suggested; fitted side by side, as each takes its time.
     *
     * @param stopped asked before each of them; then the answer is of no use
     */
    List<BallMark> near(Shaft shaft, Seen seen, BooleanSupplier stopped) {
        double span = PoseSearch.span(seen);
        List<BallMark> balls = new ArrayList<>();
        discs(shaft.low(), REACH * span, LEAST_SHARE * span / 2, MOST_SHARE * span / 2).parallelStream()
                .filter(disc -> !stopped.getAsBoolean())
                .map(disc -> BallOutline.fit(frame, view, focalPx, disc.at))
                .flatMap(Optional::stream)
                .filter(b -> isOfThatSize(b, span))
                .filter(b -> b.centre().distancePx(shaft.low()) < FURTHEST * span)
                .filter(b -> !isOf(b, shaft) && Standing.fromFeet(seen, b.centre()) > AROUND_FEET * span)
                .map(BallSearch::suggested)
                .forEachOrdered(b -> {
                    if (balls.stream().noneMatch(o -> o.centre().distancePx(b.centre()) < LEAST_SHARE * span)) {
                        balls.add(b);
                    }
                });
        return balls;
    }

    /** Those that no rod's cap was taken for. */
    static List<BallMark> besides(List<BallMark> balls, List<SnappedRod> rods) {
        return balls.stream()
                .filter(b -> rods.stream().noneMatch(r -> isOf(b, r)))
                .toList();
    }

    private static boolean isOfThatSize(BallMark ball, double span) {
        double diameter = ball.diameterPx().orElse(0);
        return diameter > 0.9 * LEAST_SHARE * span
                && diameter < 1.1 * MOST_SHARE * span
                && ball.diameterSigmaPx() < LEAST_SURE * diameter;
    }

    /** A highlight on the club's head lies where the shaft ends. */
    private static boolean isOf(BallMark ball, Shaft shaft) {
        return RodSearch.fromStretch(ball.centre(), shaft.hands(), shaft.low())
                < ON_THE_SHAFT * ball.diameterPx().orElse(0);
    }

    /** The cap of a rod is white, and lies at its end; the ball may lie before the rod's middle. */
    private static boolean isOf(BallMark ball, SnappedRod rod) {
        double nearer = Math.min(
                ball.centre().distancePx(rod.from().at()),
                ball.centre().distancePx(rod.to().at()));
        return nearer < ball.diameterPx().orElse(0);
    }

    private static BallMark suggested(BallMark b) {
        return new BallMark(b.centre(), b.diameterPx(), b.sigmaPx(), b.diameterSigmaPx(), Mark.Origin.SUGGESTED);
    }

    private List<Disc> discs(ImagePoint about, double reach, double leastRadius, double mostRadius) {
        List<Disc> discs = new ArrayList<>();
        double step = Math.max(1, leastRadius / 4);
        for (double y = about.yPx() - reach / 2; y <= about.yPx() + reach; y += step) {
            for (double x = about.xPx() - reach; x <= about.xPx() + reach; x += step) {
                double whiter = Math.max(whiter(x, y, leastRadius), whiter(x, y, (leastRadius + mostRadius) / 2));
                if (whiter > LEAST_WHITER) {
                    discs.add(new Disc(new ImagePoint(x, y), whiter));
                }
            }
        }
        discs.sort(Comparator.comparingDouble(Disc::whiter).reversed());
        List<Disc> apart = new ArrayList<>();
        for (Disc disc : discs) {
            if (apart.size() < MOST_TRIED
                    && disc.whiter > LESS_WHITE * discs.get(0).whiter
                    && apart.stream().noneMatch(o -> o.at.distancePx(disc.at) < 2 * leastRadius)) {
                apart.add(disc);
            }
        }
        return apart;
    }

    /** How much whiter a disc is than a ring around it, of which the brightest quarter is left out: a line, a shoe, the club. */
    private double whiter(double x, double y, double r) {
        double inside = 0;
        double[] ring = new double[16];
        for (int i = 0; i < 16; i++) {
            double c = Math.cos(i * Math.PI / 8);
            double s = Math.sin(i * Math.PI / 8);
            ring[i] = at(x + 1.6 * r * c, y + 1.6 * r * s);
            inside += (at(x + 0.65 * r * c, y + 0.65 * r * s) + at(x + 0.3 * r * c, y + 0.3 * r * s)) / 32;
        }
        Arrays.sort(ring);
        return inside - ring[11];
    }

    private double at(double x, double y) {
        return frame.whiteness((int) Math.floor(x), (int) Math.floor(y));
    }
}
