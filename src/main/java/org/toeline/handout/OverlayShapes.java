package org.toeline.handout;

import static org.toeline.mark.Landmark.*;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.advice.Assessment;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.posture.Posture;
import org.toeline.reading.ReadingKind;

/**
 * The lines that follow from the marks, as they fall in a view's picture: each is straight in the world and is projected
 * through the estimated camera. Only what is marked is drawn. Picture pixels, as shown.
 */
public final class OverlayShapes {

    /** What a line shows. */
    public enum Kind {
        /** The line across the shoulders. */
        SHOULDERS,
        /** The level through the trail shoulder, to see the tilt against. */
        LEVEL,
        /** The line along the toes. */
        TOES,
        /** The line through the heels. */
        HEELS,
        /** Straight down from the lead shoulder, and square across the ground to the ball's line. */
        PLUMB,
        /** Along the ground from under the lead shoulder to the ball. */
        GAP,
        /** The target line through the ball. */
        TARGET,
        /** Middle of the hips to middle of the shoulders. */
        SPINE,
        /** Along the shaft. */
        SHAFT,
        /** The level of the crown, drawn to the ball. */
        CROWN
    }

    /**
     * A line of the picture.
     *
     * @param reading the reading it shows, whose figure stands beside it
     */
    public record Line(Kind kind, List<ImagePoint> points, Optional<ReadingKind> reading) {

        public Line {
            points = List.copyOf(points);
        }
    }

    private static final double TARGET_REACH_M = 0.9;
    private static final double PAST_M = 0.10;

    private final Posture posture;
    private final View view;
    private final List<Line> lines = new ArrayList<>();

    private OverlayShapes(Posture posture, View view) {
        this.posture = posture;
        this.view = view;
    }

    /** All lines that the marks support, in the order they are best drawn. */
    public static List<Line> of(Assessment assessment, View view) {
        OverlayShapes shapes = new OverlayShapes(assessment.posture(), view);
        if (assessment.posture().camera(view).isPresent()) {
            if (view == View.TEE) {
                shapes.crown();
            } else {
                shapes.all();
            }
        }
        return List.copyOf(shapes.lines);
    }

    /** The lines that a reading is seen by. */
    public static Set<Kind> mattersFor(ReadingKind kind) {
        return switch (kind) {
            case BALL_ABOVE_CROWN, TEE_HEIGHT -> EnumSet.of(Kind.CROWN);
            case BALL_TO_LEAD_SHOULDER -> EnumSet.of(Kind.PLUMB, Kind.GAP, Kind.TARGET);
            case LEAD_FOOT_OUTSIDE_SHOULDER, BALL_TO_LEAD_HEEL, BALL_IN_STANCE ->
                    EnumSet.of(Kind.PLUMB, Kind.GAP, Kind.TARGET, Kind.HEELS);
            case FEET_TO_TARGET, BALL_DISTANCE, LEAD_FOOT_FLARE, TRAIL_FOOT_FLARE ->
                    EnumSet.of(Kind.TOES, Kind.TARGET);
            case SHOULDERS_TO_TARGET -> EnumSet.of(Kind.SHOULDERS, Kind.TARGET);
            case SHOULDERS_TO_FEET -> EnumSet.of(Kind.SHOULDERS, Kind.TOES);
            case SHOULDER_TILT, TRAIL_HAND_LOWER -> EnumSet.of(Kind.SHOULDERS, Kind.LEVEL);
            case STANCE_WIDTH, STANCE_TO_SHOULDER_WIDTH -> EnumSet.of(Kind.HEELS, Kind.SHOULDERS);
            case SIDE_BEND, FORWARD_BEND, KNEE_FLEX -> EnumSet.of(Kind.SPINE);
            case HEAD_TO_BALL -> EnumSet.of(Kind.TARGET, Kind.SPINE);
            case SHAFT_LEAN -> EnumSet.of(Kind.SHAFT);
        };
    }

    private void all() {
        if (posture.hasBall()) {
            line(Kind.TARGET, Optional.empty(), new WorldPoint(-TARGET_REACH_M, 0, 0),
                    new WorldPoint(TARGET_REACH_M, 0, 0));
        }
        between(Kind.HEELS, Optional.of(ReadingKind.STANCE_WIDTH), TRAIL_HEEL, LEAD_HEEL, 0);
        between(Kind.TOES, Optional.of(ReadingKind.FEET_TO_TARGET), TRAIL_TOE, LEAD_TOE, PAST_M);
        plumb();
        between(Kind.SHAFT, Optional.of(ReadingKind.SHAFT_LEAN), CLUB_HEAD, GRIP_END, 0);
        if (has(LEAD_HIP, TRAIL_HIP, LEAD_SHOULDER, TRAIL_SHOULDER)) {
            line(Kind.SPINE, Optional.empty(), middle(LEAD_HIP, TRAIL_HIP), middle(LEAD_SHOULDER, TRAIL_SHOULDER));
        }
        if (has(LEAD_SHOULDER, TRAIL_SHOULDER)) {
            WorldPoint trail = posture.at(TRAIL_SHOULDER);
            WorldPoint lead = posture.at(LEAD_SHOULDER);
            line(Kind.LEVEL, Optional.empty(), trail, new WorldPoint(lead.t(), lead.h(), trail.u()));
            between(Kind.SHOULDERS, Optional.of(view == View.FACE_ON ? ReadingKind.SHOULDER_TILT
                    : ReadingKind.SHOULDERS_TO_FEET), TRAIL_SHOULDER, LEAD_SHOULDER, PAST_M);
        }
    }

    private void plumb() {
        if (!has(LEAD_SHOULDER)) {
            return;
        }
        WorldPoint s = posture.at(LEAD_SHOULDER);
        WorldPoint foot = new WorldPoint(s.t(), s.h(), 0);
        WorldPoint beside = new WorldPoint(s.t(), 0, 0);
        if (!posture.hasBall()) {
            line(Kind.PLUMB, Optional.empty(), s, foot);
        } else {
            line(Kind.PLUMB, Optional.empty(), s, foot, beside);
            line(Kind.GAP, Optional.of(ReadingKind.BALL_TO_LEAD_SHOULDER), beside, WorldPoint.ORIGIN);
        }
    }

    private void crown() {
        if (has(CROWN) && posture.hasBall()) {
            WorldPoint c = posture.at(CROWN);
            double reach = posture.ball().t() + 0.045;
            line(Kind.CROWN, Optional.of(ReadingKind.BALL_ABOVE_CROWN), new WorldPoint(c.t() - 0.03, c.h(), c.u()),
                    new WorldPoint(reach, c.h(), c.u()));
        }
    }

    private boolean has(Landmark... landmarks) {
        return java.util.Arrays.stream(landmarks).allMatch(posture::has);
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
