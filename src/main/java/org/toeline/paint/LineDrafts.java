package org.toeline.paint;

import static org.toeline.mark.Landmark.*;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.paint.OverlayShapes.Kind;
import org.toeline.paint.OverlayShapes.Line;
import org.toeline.posture.Posture;
import org.toeline.reading.ReadingKind;

/** Draws up the lines of one view: straight in the world, projected through the estimated camera. */
final class LineDrafts {

    private static final double TARGET_REACH_M = 0.9;
    private static final double PAST_M = 0.10;
    /** Half the smallest diameter a ball may have (Equipment Rules, part 4). */
    private static final double BALL_RADIUS_M = 0.02134;
    /** How far an upright reaches beside the shaft. */
    private static final double SHAFT_REACH_M = 0.9;

    private final Posture posture;
    private final View view;
    private final List<Line> lines = new ArrayList<>();

    LineDrafts(Posture posture, View view) {
        this.posture = posture;
        this.view = view;
    }

    List<Line> all() {
        if (view == View.TEE) {
            tee();
        } else {
            ground();
            feet();
            body();
        }
        return List.copyOf(lines);
    }

    private void tee() {
        if (!posture.hasBall()) {
            return;
        }
        WorldPoint ball = posture.ball();
        double underside = ball.u() - BALL_RADIUS_M;
        double beside = ball.t() + 0.035;
        if (underside > 0) {
            line(
                    Kind.TEE,
                    Optional.of(ReadingKind.TEE_HEIGHT),
                    new WorldPoint(beside, ball.h(), 0),
                    new WorldPoint(beside, ball.h(), underside));
        }
        if (has(CROWN)) {
            WorldPoint c = posture.at(CROWN);
            line(
                    Kind.CROWN,
                    Optional.of(ReadingKind.BALL_ABOVE_CROWN),
                    new WorldPoint(c.t() - 0.03, c.h(), c.u()),
                    new WorldPoint(ball.t() + 0.045, c.h(), c.u()));
        }
    }

    private void ground() {
        if (posture.hasBall()) {
            line(
                    Kind.TARGET,
                    Optional.empty(),
                    new WorldPoint(-TARGET_REACH_M, 0, 0),
                    new WorldPoint(TARGET_REACH_M, 0, 0));
            distance();
        }
        between(Kind.HEELS, Optional.of(ReadingKind.STANCE_WIDTH), TRAIL_HEEL, LEAD_HEEL, 0);
        between(Kind.TOES, Optional.of(ReadingKind.FEET_TO_TARGET), TRAIL_TOE, LEAD_TOE, PAST_M);
        square(Kind.TRAIL_SQUARE, TRAIL_HEEL);
        square(Kind.LEAD_SQUARE, LEAD_HEEL);
        plumb();
        if (has(LEAD_HEEL) && posture.hasBall()) {
            line(Kind.HEEL_GAP, Optional.of(ReadingKind.BALL_TO_LEAD_HEEL), beside(LEAD_HEEL), WorldPoint.ORIGIN);
        }
        if (has(TRAIL_HEEL, LEAD_HEEL) && posture.hasBall()) {
            line(Kind.STANCE_SHARE, Optional.of(ReadingKind.BALL_IN_STANCE), beside(TRAIL_HEEL), WorldPoint.ORIGIN);
        }
    }

    private void square(Kind kind, Landmark heel) {
        if (has(heel)) {
            WorldPoint h = posture.at(heel);
            line(kind, Optional.empty(), new WorldPoint(h.t(), h.h(), 0), beside(heel));
        }
    }

    /** The point of the ball's line that is level with a landmark. */
    private WorldPoint beside(Landmark landmark) {
        return new WorldPoint(posture.at(landmark).t(), 0, 0);
    }

    private void plumb() {
        if (!has(LEAD_SHOULDER)) {
            return;
        }
        WorldPoint s = posture.at(LEAD_SHOULDER);
        WorldPoint foot = new WorldPoint(s.t(), s.h(), 0);
        if (!posture.hasBall()) {
            line(Kind.PLUMB, Optional.empty(), s, foot);
        } else {
            line(Kind.PLUMB, Optional.empty(), s, foot, beside(LEAD_SHOULDER));
            line(Kind.GAP, Optional.of(ReadingKind.BALL_TO_LEAD_SHOULDER), beside(LEAD_SHOULDER), WorldPoint.ORIGIN);
        }
        if (has(LEAD_HEEL)) {
            WorldPoint heel = posture.at(LEAD_HEEL);
            line(
                    Kind.FOOT_GAP,
                    Optional.of(ReadingKind.LEAD_FOOT_OUTSIDE_SHOULDER),
                    new WorldPoint(s.t(), heel.h(), 0),
                    new WorldPoint(heel.t(), heel.h(), 0));
        }
    }

    private void distance() {
        if (has(LEAD_TOE, TRAIL_TOE)) {
            WorldPoint a = posture.at(TRAIL_TOE);
            WorldPoint b = posture.at(LEAD_TOE);
            double along = b.t() - a.t();
            if (Math.abs(along) > 0.01) {
                double h = a.h() - a.t() * (b.h() - a.h()) / along;
                line(Kind.DISTANCE, Optional.of(ReadingKind.BALL_DISTANCE), new WorldPoint(0, h, 0), WorldPoint.ORIGIN);
            }
        }
    }

    private void feet() {
        between(Kind.LEAD_FOOT, Optional.of(ReadingKind.LEAD_FOOT_FLARE), LEAD_HEEL, LEAD_TOE, 0);
        between(Kind.TRAIL_FOOT, Optional.of(ReadingKind.TRAIL_FOOT_FLARE), TRAIL_HEEL, TRAIL_TOE, 0);
        if (has(TRAIL_HIP, TRAIL_KNEE, TRAIL_ANKLE)) {
            line(
                    Kind.TRAIL_LEG,
                    Optional.of(ReadingKind.KNEE_FLEX),
                    posture.at(TRAIL_HIP),
                    posture.at(TRAIL_KNEE),
                    posture.at(TRAIL_ANKLE));
        }
    }

    private void body() {
        between(Kind.SHAFT, Optional.of(ReadingKind.SHAFT_LEAN), CLUB_HEAD, GRIP_END, 0);
        if (has(CLUB_HEAD, GRIP_END)) {
            WorldPoint head = posture.at(CLUB_HEAD);
            line(Kind.SHAFT_UPRIGHT, Optional.empty(), head, head.plus(0, 0, SHAFT_REACH_M));
        }
        between(Kind.HANDS, Optional.of(ReadingKind.TRAIL_HAND_LOWER), TRAIL_WRIST, LEAD_WRIST, 0);
        if (has(HEAD_CENTRE) && posture.hasBall()) {
            WorldPoint head = posture.at(HEAD_CENTRE);
            line(
                    Kind.HEAD,
                    Optional.of(ReadingKind.HEAD_TO_BALL),
                    head,
                    new WorldPoint(head.t(), head.h(), 0),
                    beside(HEAD_CENTRE),
                    WorldPoint.ORIGIN);
        }
        if (has(LEAD_HIP, TRAIL_HIP, LEAD_SHOULDER, TRAIL_SHOULDER)) {
            WorldPoint hips = middle(LEAD_HIP, TRAIL_HIP);
            WorldPoint shoulders = middle(LEAD_SHOULDER, TRAIL_SHOULDER);
            line(Kind.UPRIGHT, Optional.empty(), hips, new WorldPoint(hips.t(), hips.h(), shoulders.u()));
            line(
                    Kind.SPINE,
                    Optional.of(view == View.FACE_ON ? ReadingKind.SIDE_BEND : ReadingKind.FORWARD_BEND),
                    hips,
                    shoulders);
        }
        if (has(LEAD_SHOULDER, TRAIL_SHOULDER)) {
            WorldPoint trail = posture.at(TRAIL_SHOULDER);
            WorldPoint lead = posture.at(LEAD_SHOULDER);
            line(Kind.LEVEL, Optional.empty(), trail, new WorldPoint(lead.t(), lead.h(), trail.u()));
            between(
                    Kind.SHOULDERS,
                    Optional.of(view == View.FACE_ON ? ReadingKind.SHOULDER_TILT : ReadingKind.SHOULDERS_TO_FEET),
                    TRAIL_SHOULDER,
                    LEAD_SHOULDER,
                    PAST_M);
        }
    }

    private boolean has(Landmark... landmarks) {
        return Arrays.stream(landmarks).allMatch(posture::has);
    }

    private WorldPoint middle(Landmark a, Landmark b) {
        WorldPoint p = posture.at(a);
        WorldPoint q = posture.at(b);
        return new WorldPoint((p.t() + q.t()) / 2, (p.h() + q.h()) / 2, (p.u() + q.u()) / 2);
    }

    /** From one landmark to another, and past both by so much. */
    private void between(Kind kind, Optional<ReadingKind> reading, Landmark from, Landmark to, double pastM) {
        if (has(from, to)) {
            WorldPoint a = posture.at(from);
            WorldPoint b = posture.at(to);
            double f = pastM / Math.max(0.01, a.distance(b));
            WorldPoint d = b.minus(a);
            line(kind, reading, a.plus(-f * d.t(), -f * d.h(), -f * d.u()), b.plus(f * d.t(), f * d.h(), f * d.u()));
        }
    }

    private void line(Kind kind, Optional<ReadingKind> reading, WorldPoint... along) {
        List<ImagePoint> points = new ArrayList<>();
        for (WorldPoint p : along) {
            Optional<ImagePoint> seen = posture.seen(view, p);
            if (seen.isEmpty()) {
                return;
            }
            points.add(seen.get());
        }
        lines.add(new Line(kind, points, reading));
    }
}
