package org.toeline.assist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.toeline.assist.Strokes.Stroke;
import org.toeline.assist.ViewSuggestion.Part;
import org.toeline.assist.ViewSuggestion.Reason;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.Mark;
import org.toeline.mark.View;
import org.toeline.video.Frame;

/**
 * Marks the close view of the tee: the shaft that comes down into it, the one ball beside its end, the top of a dark head between
 * the two, and the foot of the tee. In this order: without a shaft there is no ball, and without a ball nothing else. Lengths
 * are of the ball's diameter.
 */
final class TeeSuggester {

    /** A ball of 42.67 mm seen from 0.45 to 1 m with a phone's main camera, share of the picture's width. */
    private static final double LEAST_BALL = 0.024;

    private static final double MOST_BALL = 0.085;
    private static final int MOST_TRIED = 2;
    /** Two that are nearer, radii, are of one thing. */
    private static final double APART = 1.5;

    private static final double LEAST_WHITER = 25;
    /** The whitest disc lies above a ball's middle, as below it is in shade, and before a shoe the more so; radii. */
    private static final double SHADED = 0.35;

    private static final double LESS_WHITE = 0.5;
    /** What lies so much higher than a ball lies further off, as shoes do. */
    private static final double HIGHER = 0.35;

    private static final double LEAST_SURE = 0.1;
    /** What is found twice lies nearer than this, diameters. */
    private static final double AGAIN = 0.03;

    private static final double STEEP_RAD = Math.toRadians(55);
    /** Of the shaft's edges, share of the picture's height: trousers end further up, posts stand further off. */
    private static final double SHORTEST_SHAFT = 0.35;

    /** How far its lower end may lie from the ball: a driver's head is some 120 mm long. */
    private static final double BESIDE = 2.6;

    private static final double ABOVE = 1.6;
    private static final double BELOW = 1.4;

    private final Frame frame;
    private final Asked asked;
    private final BooleanSupplier stopped;
    private final Map<Part, Reason> missing = new EnumMap<>(Part.class);

    TeeSuggester(Asked asked, BooleanSupplier stopped) {
        this.frame = asked.frame();
        this.asked = asked;
        this.stopped = stopped;
    }

    ViewSuggestion suggest() {
        List<Stroke> steep = Strokes.of(frame, Strokes.Of.BRIGHTNESS).stream()
                .filter(s -> s.steepnessRad() > STEEP_RAD && s.lengthPx() > SHORTEST_SHAFT * frame.height())
                .toList();
        check();
        List<BallMark> balls = asked.ball()
                .filter(b -> b.diameterPx().isPresent())
                .map(List::of)
                .orElseGet(() -> balls(steep));
        check();
        if (balls.size() != 1) {
            Reason none = steep.isEmpty() ? Reason.NO_SHAFT : Reason.NOT_FOUND;
            missing.put(Part.BALL, balls.isEmpty() ? none : Reason.SEVERAL);
            missing.put(Part.CROWN, Reason.NO_BALL);
            missing.put(Part.GROUND, Reason.NO_BALL);
            return seen(List.of(), Optional.empty());
        }
        BallMark ball = balls.get(0);
        List<Mark> marks = new ArrayList<>();
        shaft(steep, ball.centre(), diameter(ball))
                .flatMap(shaft -> new HeadTop(frame, ball, shaft).find())
                .ifPresentOrElse(marks::add, () -> missing.put(Part.CROWN, Reason.NOT_FOUND));
        new TeeFoot(frame, ball).find().ifPresentOrElse(marks::add, () -> missing.put(Part.GROUND, Reason.NOT_FOUND));
        return seen(marks, Optional.of(ball));
    }

    private ViewSuggestion seen(List<Mark> marks, Optional<BallMark> ball) {
        return new ViewSuggestion(
                Optional.empty(), Optional.empty(), OptionalDouble.empty(), marks, ball, List.of(), List.of(), missing);
    }

    private void check() {
        if (stopped.getAsBoolean()) {
            throw new CancellationException("stopped");
        }
    }

    /** What beside a shaft is fitted as one: the lowest, and another that lies no higher than that. */
    private List<BallMark> balls(List<Stroke> steep) {
        List<BallMark> balls = new ArrayList<>();
        for (ImagePoint at : discs(steep)) {
            check();
            boolean higher = balls.stream()
                    .anyMatch(b -> at.yPx() < b.centre().yPx() - HIGHER * diameter(b)
                            || at.distancePx(b.centre()) < diameter(b));
            if (!higher) {
                twice(at)
                        .filter(b -> isOfThatSize(b)
                                && shaft(steep, b.centre(), diameter(b)).isPresent())
                        .map(b -> new BallMark(
                                b.centre(), b.diameterPx(), b.sigmaPx(), b.diameterSigmaPx(), Mark.Origin.SUGGESTED))
                        .ifPresent(balls::add);
            }
        }
        return balls;
    }

    /** What is found there, and found again from its own middle. */
    private Optional<BallMark> twice(ImagePoint at) {
        return BallOutline.fit(frame, View.TEE, asked.focalPx(), at).filter(this::again);
    }

    private boolean again(BallMark ball) {
        double near = Math.max(1, AGAIN * diameter(ball));
        return BallOutline.fit(frame, View.TEE, asked.focalPx(), ball.centre())
                .filter(b ->
                        b.centre().distancePx(ball.centre()) < near && Math.abs(diameter(b) - diameter(ball)) < near)
                .isPresent();
    }

    private boolean isOfThatSize(BallMark ball) {
        double d = diameter(ball);
        return d > LEAST_BALL * frame.width()
                && d < MOST_BALL * frame.width()
                && ball.diameterSigmaPx() < LEAST_SURE * d
                && ball.centre().yPx() + 1.5 * d < frame.height();
    }

    static double diameter(BallMark ball) {
        return ball.diameterPx().orElse(0);
    }

    /** The middles of the whitest discs beside a shaft, the lowest first: shoes stand behind the ball. */
    private List<ImagePoint> discs(List<Stroke> steep) {
        record Disc(ImagePoint at, double r, double whiter) {}
        List<Disc> discs = new ArrayList<>();
        double step = LEAST_BALL * frame.width() / 5;
        for (double share = LEAST_BALL; share < MOST_BALL; share *= 1.4) {
            double r = share * frame.width() / 2;
            for (double y = r; y < frame.height() - r; y += step) {
                for (double x = r; x < frame.width() - r; x += step) {
                    ImagePoint at = new ImagePoint(x, y);
                    double whiter = shaft(steep, at, 2 * r).isEmpty() ? 0 : whiter(x, y, r);
                    if (whiter > LEAST_WHITER) {
                        discs.add(new Disc(at, r, whiter));
                    }
                }
            }
        }
        discs.sort(Comparator.comparingDouble(Disc::whiter).reversed());
        List<Disc> apart = new ArrayList<>();
        for (Disc disc : discs) {
            if (apart.size() < MOST_TRIED
                    && disc.whiter > LESS_WHITE * discs.get(0).whiter
                    && apart.stream().noneMatch(o -> o.at.distancePx(disc.at) < APART * Math.max(o.r, disc.r))) {
                apart.add(disc);
            }
        }
        return apart.stream()
                .map(d -> d.at.plus(0, SHADED * d.r))
                .sorted(Comparator.comparingDouble(ImagePoint::yPx).reversed())
                .toList();
    }

    /** How much whiter a disc is than the ring around it; half of that may be a shoe behind the ball. */
    private double whiter(double x, double y, double r) {
        double inside = 0;
        double least = 255;
        double[] ring = new double[16];
        for (int i = 0; i < 16; i++) {
            double c = Math.cos(i * Math.PI / 8);
            double s = Math.sin(i * Math.PI / 8);
            double in = at(x + 0.6 * r * c, y + 0.6 * r * s);
            ring[i] = at(x + 1.5 * r * c, y + 1.5 * r * s);
            least = Math.min(least, in);
            inside += in / 16;
        }
        Arrays.sort(ring);
        return (inside + least) / 2 - (ring[8] + ring[12]) / 2;
    }

    private double at(double x, double y) {
        return frame.whiteness((int) Math.floor(x), (int) Math.floor(y));
    }

    /** The place where a shaft ends that comes from above down to beside a ball. */
    private static Optional<ImagePoint> shaft(List<Stroke> steep, ImagePoint at, double d) {
        return steep.stream()
                .map(Stroke::lower)
                .filter(low -> Math.abs(low.xPx() - at.xPx()) < BESIDE * d
                        && low.yPx() > at.yPx() - ABOVE * d
                        && low.yPx() < at.yPx() + BELOW * d)
                .findFirst();
    }
}
