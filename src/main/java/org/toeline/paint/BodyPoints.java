package org.toeline.paint;

import static org.toeline.mark.Landmark.*;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.posture.Posture;

/**
 * Where the player, the club and the ball are in a picture, as points along limbs and shaft: enough to frame the player and
 * to keep writing off.
 */
public final class BodyPoints {

    private static final Landmark[][] LIMBS = {
        {LEAD_SHOULDER, TRAIL_SHOULDER},
        {LEAD_HIP, TRAIL_HIP},
        {LEAD_SHOULDER, LEAD_HIP},
        {TRAIL_SHOULDER, TRAIL_HIP},
        {LEAD_SHOULDER, LEAD_ELBOW},
        {LEAD_ELBOW, LEAD_WRIST},
        {TRAIL_SHOULDER, TRAIL_ELBOW},
        {TRAIL_ELBOW, TRAIL_WRIST},
        {LEAD_HIP, LEAD_KNEE},
        {LEAD_KNEE, LEAD_ANKLE},
        {TRAIL_HIP, TRAIL_KNEE},
        {TRAIL_KNEE, TRAIL_ANKLE},
        {LEAD_HEEL, LEAD_TOE},
        {TRAIL_HEEL, TRAIL_TOE},
        {LEAD_WRIST, CLUB_HEAD},
        {NECK, HEAD_CENTRE}
    };
    private static final Landmark[][] NO_LIMBS = {};
    private static final int STEPS = 8;
    private static final double HEAD_RADIUS_M = 0.13;
    /** The ball and some turf, in its diameters; in the close view as much as shows the club head beside it. */
    private static final double AROUND_BALL = 0.8;

    private static final double AROUND_TEED_BALL = 3;

    private BodyPoints() {}

    /** Points along everything that is marked. */
    public static List<ImagePoint> of(Posture posture, ViewMarks marks) {
        View view = marks.view();
        List<ImagePoint> points = new ArrayList<>();
        for (Landmark[] limb : view == View.TEE ? NO_LIMBS : LIMBS) {
            Optional<ImagePoint> from = seen(posture, view, limb[0]);
            Optional<ImagePoint> to = seen(posture, view, limb[1]);
            if (from.isPresent() && to.isPresent()) {
                along(from.get(), to.get(), points);
            }
        }
        if (view != View.TEE) {
            seen(posture, view, HEAD_CENTRE)
                    .ifPresent(head -> around(
                            head,
                            HEAD_RADIUS_M
                                    * WorldScale.pxPerMetre(posture, view, posture.at(HEAD_CENTRE))
                                            .orElse(0.0),
                            points));
        }
        marks.marks().forEach(m -> points.add(m.at()));
        marks.ball().ifPresent(b -> {
            double ball = b.diameterPx().orElse(10);
            around(b.centre(), AROUND_BALL * ball, points);
            if (view == View.TEE) {
                around(b.centre(), ball, points);
                around(b.centre(), AROUND_TEED_BALL * ball, points);
                points.add(b.centre());
            }
        });
        return points;
    }

    private static Optional<ImagePoint> seen(Posture posture, View view, Landmark landmark) {
        return posture.has(landmark) ? posture.seen(view, posture.at(landmark)) : Optional.empty();
    }

    private static void along(ImagePoint a, ImagePoint b, List<ImagePoint> points) {
        for (int i = 0; i <= STEPS; i++) {
            double f = i / (double) STEPS;
            points.add(new ImagePoint(a.xPx() + f * (b.xPx() - a.xPx()), a.yPx() + f * (b.yPx() - a.yPx())));
        }
    }

    private static void around(ImagePoint centre, double radiusPx, List<ImagePoint> points) {
        for (int i = 0; i < STEPS; i++) {
            double angle = 2 * Math.PI * i / STEPS;
            points.add(centre.plus(radiusPx * Math.cos(angle), radiusPx * Math.sin(angle)));
        }
    }

    /** The smallest upright box around points; at least one point. */
    public static Rectangle2D box(List<ImagePoint> points) {
        Rectangle2D box =
                new Rectangle2D.Double(points.get(0).xPx(), points.get(0).yPx(), 0, 0);
        points.forEach(p -> box.add(p.xPx(), p.yPx()));
        return box;
    }
}
