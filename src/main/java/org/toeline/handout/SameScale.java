package org.toeline.handout;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.paint.BodyPoints;
import org.toeline.paint.PictureFrame;
import org.toeline.paint.WorldScale;
import org.toeline.posture.Posture;

/**
 * Two pictures of a view in two frames of one size, with as many units to a metre at the player and the ball in the same
 * place of each, by the estimated cameras.
 */
record SameScale(Placed left, Placed right) {

    private static final double FILLS = 0.94;
    /** What is left free above the players, for writing, of the height. */
    private static final double ABOVE = 0.08;

    private static final double WAIST_M = 0.9;

    /** @param unitsPerMetre drawing units to a metre, straight up at the player */
    record Placed(View view, PictureFrame picture, double unitsPerMetre) {}

    /** A picture's own scale: where its ball is, and what it shows of the player, in metres from the ball. */
    private record Own(Handout handout, ImagePoint ball, double pxPerMetre, Rectangle2D aroundM) {}

    /** The views that have a picture and a camera in both. */
    static Set<View> views(Handout a, Handout b) {
        Set<View> views = EnumSet.noneOf(View.class);
        a.pictures().keySet().stream()
                .filter(v -> own(a, v).isPresent()
                        && b.pictures().containsKey(v)
                        && own(b, v).isPresent())
                .forEach(views::add);
        return views;
    }

    static Optional<SameScale> of(Handout a, Handout b, View view, Rectangle2D left, Rectangle2D right) {
        return own(a, view)
                .flatMap(one -> own(b, view).map(two -> {
                    Rectangle2D around = one.aroundM.createUnion(two.aroundM);
                    double unitsPerMetre = FILLS
                            * Math.min(
                                    left.getWidth() / around.getWidth(),
                                    (1 - ABOVE) * left.getHeight() / around.getHeight());
                    return new SameScale(
                            place(one, view, around, unitsPerMetre, left),
                            place(two, view, around, unitsPerMetre, right));
                }));
    }

    private static Optional<Own> own(Handout handout, View view) {
        Posture posture = handout.assessment().posture();
        Optional<ImagePoint> ball = posture.seen(view, WorldPoint.ORIGIN);
        Optional<Double> scale = WorldScale.pxPerMetre(posture, view, player(posture));
        List<ImagePoint> points = handout.assessment()
                .sheet()
                .view(view)
                .map(m -> BodyPoints.of(posture, m))
                .orElse(List.of());
        if (ball.isEmpty() || scale.isEmpty() || points.isEmpty() || view == View.TEE) {
            return Optional.empty();
        }
        double s = scale.get();
        List<ImagePoint> metres = points.stream()
                .map(p -> new ImagePoint(
                        (p.xPx() - ball.get().xPx()) / s, (p.yPx() - ball.get().yPx()) / s))
                .toList();
        return Optional.of(new Own(handout, ball.get(), s, BodyPoints.box(metres)));
    }

    /** The height of the waist over where the player stands. */
    static WorldPoint player(Posture posture) {
        for (List<Landmark> pair : List.of(
                List.of(Landmark.LEAD_HEEL, Landmark.TRAIL_HEEL),
                List.of(Landmark.LEAD_HIP, Landmark.TRAIL_HIP),
                List.of(Landmark.LEAD_SHOULDER, Landmark.TRAIL_SHOULDER))) {
            if (posture.has(pair.get(0)) && posture.has(pair.get(1))) {
                WorldPoint a = posture.at(pair.get(0));
                WorldPoint b = posture.at(pair.get(1));
                return new WorldPoint((a.t() + b.t()) / 2, (a.h() + b.h()) / 2, WAIST_M);
            }
        }
        return new WorldPoint(0, 0, WAIST_M);
    }

    private static Placed place(Own own, View view, Rectangle2D aroundM, double unitsPerMetre, Rectangle2D frame) {
        double scale = unitsPerMetre / own.pxPerMetre;
        double ballX = frame.getCenterX() - aroundM.getCenterX() * unitsPerMetre;
        double ballY = frame.getCenterY() + frame.getHeight() * ABOVE / 2 - aroundM.getCenterY() * unitsPerMetre;
        AffineTransform to =
                new AffineTransform(scale, 0, 0, scale, ballX - scale * own.ball.xPx(), ballY - scale * own.ball.yPx());
        return new Placed(
                view,
                new PictureFrame(
                        frame,
                        to,
                        own.handout
                                .options()
                                .face()
                                .on(
                                        Objects.requireNonNull(
                                                own.handout.pictures().get(view)),
                                        own.handout.assessment().posture(),
                                        view)),
                unitsPerMetre);
    }
}
