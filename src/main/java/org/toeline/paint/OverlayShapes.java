package org.toeline.paint;

import static org.toeline.mark.Landmark.*;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.advice.Assessment;
import org.toeline.geometry.GolfBall;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.posture.Posture;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Readings;

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
        CROWN,
        /** Square across the ground from the lead heel to the ball's line. */
        LEAD_SQUARE,
        /** Square across the ground from the trail heel to the ball's line. */
        TRAIL_SQUARE,
        /** Along the ball's line from level with the lead heel to the ball. */
        HEEL_GAP,
        /** Along the ball's line from level with the trail heel to the ball. */
        STANCE_SHARE,
        /** Along the ground from under the lead shoulder to level with the lead heel. */
        FOOT_GAP,
        /** From the toe line square to the ball. */
        DISTANCE,
        /** Straight down from the head to the ball's height, and along to the ball. */
        HEAD,
        /** From wrist to wrist. */
        HANDS,
        /** Straight up from the middle of the hips, to see a lean against. */
        UPRIGHT,
        /** Straight up from the club head. */
        SHAFT_UPRIGHT,
        /** Hip, knee and ankle of the trail leg. */
        TRAIL_LEG,
        /** Level from the end of the grip to the front of the trail thigh. */
        HANDS_GAP,
        /** Heel to toe of the lead foot. */
        LEAD_FOOT,
        /** Heel to toe of the trail foot. */
        TRAIL_FOOT,
        /** From the ground to the underside of the ball. */
        TEE
    }

    /**
     * A line of the picture.
     *
     * @param reading the reading it shows, whose figure stands beside it
     */
    public record Line(Kind kind, List<ImagePoint> points, Optional<ReadingKind> reading) {

        public Line {
            points = List.copyOf(points);
            if (points.size() < 2) {
                throw new IllegalArgumentException(kind + " has " + points.size() + " points; a line needs two");
            }
        }
    }

    /**
     * How a reading is seen.
     *
     * @param by      the one line that shows it
     * @param best    the view that shows it best
     * @param against what that line is seen against
     */
    private record Seen(Kind by, View best, Set<Kind> against) {

        private static Seen by(Kind line, View best, Kind... against) {
            return new Seen(line, best, Set.of(against));
        }
    }

    private static Seen seen(ReadingKind kind) {
        return switch (kind) {
            case BALL_ABOVE_CROWN -> Seen.by(Kind.CROWN, View.TEE);
            case TEE_HEIGHT -> Seen.by(Kind.TEE, View.TEE);
            case BALL_TO_LEAD_SHOULDER -> Seen.by(Kind.GAP, View.FACE_ON, Kind.PLUMB, Kind.TARGET);
            case BALL_IN_STANCE ->
                Seen.by(Kind.STANCE_SHARE, View.FACE_ON, Kind.LEAD_SQUARE, Kind.TRAIL_SQUARE, Kind.TARGET);
            case BALL_TO_LEAD_HEEL -> Seen.by(Kind.HEEL_GAP, View.FACE_ON, Kind.LEAD_SQUARE, Kind.TARGET);
            case LEAD_FOOT_OUTSIDE_SHOULDER -> Seen.by(Kind.FOOT_GAP, View.FACE_ON, Kind.PLUMB, Kind.LEAD_SQUARE);
            case STANCE_WIDTH -> Seen.by(Kind.HEELS, View.FACE_ON);
            case STANCE_TO_SHOULDER_WIDTH -> Seen.by(Kind.HEELS, View.FACE_ON, Kind.SHOULDERS);
            case FEET_TO_TARGET -> Seen.by(Kind.TOES, View.DOWN_THE_LINE, Kind.TARGET);
            case SHOULDERS_TO_TARGET -> Seen.by(Kind.SHOULDERS, View.DOWN_THE_LINE, Kind.TARGET);
            case SHOULDERS_TO_FEET -> Seen.by(Kind.SHOULDERS, View.DOWN_THE_LINE, Kind.TOES);
            case SHOULDER_TILT -> Seen.by(Kind.SHOULDERS, View.FACE_ON, Kind.LEVEL);
            case TRAIL_HAND_LOWER -> Seen.by(Kind.HANDS, View.FACE_ON);
            case SIDE_BEND -> Seen.by(Kind.SPINE, View.FACE_ON, Kind.UPRIGHT);
            case HEAD_TO_BALL -> Seen.by(Kind.HEAD, View.FACE_ON, Kind.TARGET);
            case SHAFT_LEAN -> Seen.by(Kind.SHAFT, View.FACE_ON, Kind.SHAFT_UPRIGHT);
            case FORWARD_BEND -> Seen.by(Kind.SPINE, View.DOWN_THE_LINE, Kind.UPRIGHT);
            case KNEE_FLEX -> Seen.by(Kind.TRAIL_LEG, View.DOWN_THE_LINE);
            case BALL_DISTANCE -> Seen.by(Kind.DISTANCE, View.DOWN_THE_LINE, Kind.TOES, Kind.TARGET);
            case HANDS_TO_BODY -> Seen.by(Kind.HANDS_GAP, View.DOWN_THE_LINE, Kind.SHAFT);
            case LEAD_FOOT_FLARE -> Seen.by(Kind.LEAD_FOOT, View.DOWN_THE_LINE, Kind.TARGET);
            case TRAIL_FOOT_FLARE -> Seen.by(Kind.TRAIL_FOOT, View.DOWN_THE_LINE, Kind.TARGET);
        };
    }

    private static final double TARGET_REACH_M = 0.9;
    private static final double PAST_M = 0.10;
    /** How far an upright reaches beside the shaft. */
    private static final double SHAFT_REACH_M = 0.9;

    private final Posture posture;
    private final View view;
    private final LineDrafts drafts;

    private OverlayShapes(Posture posture, View view) {
        this.posture = posture;
        this.view = view;
        this.drafts = new LineDrafts(posture, view);
    }

    /** All lines that the marks support, in the order they are best drawn. */
    public static List<Line> of(Assessment assessment, View view) {
        return assessment.posture().camera(view).isEmpty()
                ? List.of()
                : new OverlayShapes(assessment.posture(), view).all();
    }

    /** The one line that a reading is seen by. */
    public static Kind shows(ReadingKind kind) {
        return seen(kind).by;
    }

    /** The view that shows a reading best. */
    public static View bestView(ReadingKind kind) {
        return seen(kind).best;
    }

    /** The lines that matter for a reading: the one that shows it, and what it is seen against. */
    public static Set<Kind> mattersFor(ReadingKind kind) {
        Set<Kind> lines = EnumSet.of(shows(kind));
        lines.addAll(seen(kind).against);
        return lines;
    }

    private List<Line> all() {
        if (view == View.TEE) {
            tee();
        } else {
            ground();
            feet();
            body();
        }
        return drafts.lines();
    }

    private void tee() {
        if (!posture.hasBall()) {
            return;
        }
        WorldPoint ball = posture.ball();
        double underside = ball.u() - GolfBall.LEAST_DIAMETER_M / 2;
        double beside = ball.t() + 0.035;
        if (underside > 0) {
            drafts.line(
                    Kind.TEE,
                    Optional.of(ReadingKind.TEE_HEIGHT),
                    new WorldPoint(beside, ball.h(), 0),
                    new WorldPoint(beside, ball.h(), underside));
        }
        if (drafts.has(CROWN)) {
            WorldPoint c = posture.at(CROWN);
            drafts.line(
                    Kind.CROWN,
                    Optional.of(ReadingKind.BALL_ABOVE_CROWN),
                    new WorldPoint(c.t() - 0.03, c.h(), c.u()),
                    new WorldPoint(ball.t() + 0.045, c.h(), c.u()));
        }
    }

    private void ground() {
        if (posture.hasBall()) {
            drafts.line(
                    Kind.TARGET,
                    Optional.empty(),
                    new WorldPoint(-TARGET_REACH_M, 0, 0),
                    new WorldPoint(TARGET_REACH_M, 0, 0));
            distance();
        }
        drafts.between(Kind.HEELS, Optional.of(ReadingKind.STANCE_WIDTH), TRAIL_HEEL, LEAD_HEEL, 0);
        drafts.between(Kind.TOES, Optional.of(ReadingKind.FEET_TO_TARGET), TRAIL_TOE, LEAD_TOE, PAST_M);
        square(Kind.TRAIL_SQUARE, TRAIL_HEEL);
        square(Kind.LEAD_SQUARE, LEAD_HEEL);
        plumb();
        if (drafts.has(LEAD_HEEL) && posture.hasBall()) {
            drafts.line(
                    Kind.HEEL_GAP,
                    Optional.of(ReadingKind.BALL_TO_LEAD_HEEL),
                    drafts.beside(LEAD_HEEL),
                    WorldPoint.ORIGIN);
        }
        if (drafts.has(TRAIL_HEEL, LEAD_HEEL) && posture.hasBall()) {
            drafts.line(
                    Kind.STANCE_SHARE,
                    Optional.of(ReadingKind.BALL_IN_STANCE),
                    drafts.beside(TRAIL_HEEL),
                    WorldPoint.ORIGIN);
        }
    }

    private void square(Kind kind, Landmark heel) {
        if (drafts.has(heel)) {
            WorldPoint h = posture.at(heel);
            drafts.line(kind, Optional.empty(), new WorldPoint(h.t(), h.h(), 0), drafts.beside(heel));
        }
    }

    private void plumb() {
        if (!drafts.has(LEAD_SHOULDER)) {
            return;
        }
        WorldPoint s = posture.at(LEAD_SHOULDER);
        WorldPoint foot = new WorldPoint(s.t(), s.h(), 0);
        if (!posture.hasBall()) {
            drafts.line(Kind.PLUMB, Optional.empty(), s, foot);
        } else {
            drafts.line(Kind.PLUMB, Optional.empty(), s, foot, drafts.beside(LEAD_SHOULDER));
            drafts.line(
                    Kind.GAP,
                    Optional.of(ReadingKind.BALL_TO_LEAD_SHOULDER),
                    drafts.beside(LEAD_SHOULDER),
                    WorldPoint.ORIGIN);
        }
        if (drafts.has(LEAD_HEEL)) {
            WorldPoint heel = posture.at(LEAD_HEEL);
            drafts.line(
                    Kind.FOOT_GAP,
                    Optional.of(ReadingKind.LEAD_FOOT_OUTSIDE_SHOULDER),
                    new WorldPoint(s.t(), heel.h(), 0),
                    new WorldPoint(heel.t(), heel.h(), 0));
        }
    }

    private void distance() {
        if (drafts.has(LEAD_TOE, TRAIL_TOE)) {
            WorldPoint a = posture.at(TRAIL_TOE);
            WorldPoint b = posture.at(LEAD_TOE);
            double along = b.t() - a.t();
            if (Math.abs(along) > 0.01) {
                double h = a.h() - a.t() * (b.h() - a.h()) / along;
                drafts.line(
                        Kind.DISTANCE,
                        Optional.of(ReadingKind.BALL_DISTANCE),
                        new WorldPoint(0, h, 0),
                        WorldPoint.ORIGIN);
            }
        }
    }

    private void feet() {
        drafts.between(Kind.LEAD_FOOT, Optional.of(ReadingKind.LEAD_FOOT_FLARE), LEAD_HEEL, LEAD_TOE, 0);
        drafts.between(Kind.TRAIL_FOOT, Optional.of(ReadingKind.TRAIL_FOOT_FLARE), TRAIL_HEEL, TRAIL_TOE, 0);
        if (drafts.has(TRAIL_HIP, TRAIL_KNEE, TRAIL_ANKLE)) {
            drafts.line(
                    Kind.TRAIL_LEG,
                    Optional.of(ReadingKind.KNEE_FLEX),
                    posture.at(TRAIL_HIP),
                    posture.at(TRAIL_KNEE),
                    posture.at(TRAIL_ANKLE));
        }
    }

    private void body() {
        drafts.between(Kind.SHAFT, Optional.of(ReadingKind.SHAFT_LEAN), CLUB_HEAD, GRIP_END, 0);
        if (drafts.has(CLUB_HEAD, GRIP_END)) {
            WorldPoint head = posture.at(CLUB_HEAD);
            drafts.line(Kind.SHAFT_UPRIGHT, Optional.empty(), head, head.plus(0, 0, SHAFT_REACH_M));
        }
        Readings.of(ReadingKind.HANDS_TO_BODY, posture).ifPresent(gap -> {
            WorldPoint grip = posture.at(GRIP_END);
            drafts.line(Kind.HANDS_GAP, Optional.of(gap.kind()), grip, grip.plus(0, gap.value(), 0));
        });
        drafts.between(Kind.HANDS, Optional.of(ReadingKind.TRAIL_HAND_LOWER), TRAIL_WRIST, LEAD_WRIST, 0);
        if (drafts.has(HEAD_CENTRE) && posture.hasBall()) {
            WorldPoint head = posture.at(HEAD_CENTRE);
            drafts.line(
                    Kind.HEAD,
                    Optional.of(ReadingKind.HEAD_TO_BALL),
                    head,
                    new WorldPoint(head.t(), head.h(), 0),
                    drafts.beside(HEAD_CENTRE),
                    WorldPoint.ORIGIN);
        }
        if (drafts.has(LEAD_HIP, TRAIL_HIP, LEAD_SHOULDER, TRAIL_SHOULDER)) {
            WorldPoint hips = drafts.middle(LEAD_HIP, TRAIL_HIP);
            WorldPoint shoulders = drafts.middle(LEAD_SHOULDER, TRAIL_SHOULDER);
            drafts.line(Kind.UPRIGHT, Optional.empty(), hips, new WorldPoint(hips.t(), hips.h(), shoulders.u()));
            drafts.line(
                    Kind.SPINE,
                    Optional.of(view == View.FACE_ON ? ReadingKind.SIDE_BEND : ReadingKind.FORWARD_BEND),
                    hips,
                    shoulders);
        }
        if (drafts.has(LEAD_SHOULDER, TRAIL_SHOULDER)) {
            WorldPoint trail = posture.at(TRAIL_SHOULDER);
            WorldPoint lead = posture.at(LEAD_SHOULDER);
            drafts.line(Kind.LEVEL, Optional.empty(), trail, new WorldPoint(lead.t(), lead.h(), trail.u()));
            drafts.between(
                    Kind.SHOULDERS,
                    Optional.of(view == View.FACE_ON ? ReadingKind.SHOULDER_TILT : ReadingKind.SHOULDERS_TO_FEET),
                    TRAIL_SHOULDER,
                    LEAD_SHOULDER,
                    PAST_M);
        }
    }
}
