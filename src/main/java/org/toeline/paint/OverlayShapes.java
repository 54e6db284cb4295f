package org.toeline.paint;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.toeline.advice.Assessment;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.View;
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

    private OverlayShapes() {}

    /** All lines that the marks support, in the order they are best drawn. */
    public static List<Line> of(Assessment assessment, View view) {
        return assessment.posture().camera(view).isEmpty()
                ? List.of()
                : new LineDrafts(assessment.posture(), view).all();
    }

    /** The one line that a reading is seen by. */
    public static Kind shows(ReadingKind kind) {
        return switch (kind) {
            case BALL_ABOVE_CROWN -> Kind.CROWN;
            case TEE_HEIGHT -> Kind.TEE;
            case BALL_TO_LEAD_SHOULDER -> Kind.GAP;
            case BALL_IN_STANCE -> Kind.STANCE_SHARE;
            case BALL_TO_LEAD_HEEL -> Kind.HEEL_GAP;
            case LEAD_FOOT_OUTSIDE_SHOULDER -> Kind.FOOT_GAP;
            case STANCE_WIDTH, STANCE_TO_SHOULDER_WIDTH -> Kind.HEELS;
            case FEET_TO_TARGET -> Kind.TOES;
            case SHOULDERS_TO_TARGET, SHOULDERS_TO_FEET, SHOULDER_TILT -> Kind.SHOULDERS;
            case TRAIL_HAND_LOWER -> Kind.HANDS;
            case SIDE_BEND, FORWARD_BEND -> Kind.SPINE;
            case HEAD_TO_BALL -> Kind.HEAD;
            case SHAFT_LEAN -> Kind.SHAFT;
            case KNEE_FLEX -> Kind.TRAIL_LEG;
            case BALL_DISTANCE -> Kind.DISTANCE;
            case LEAD_FOOT_FLARE -> Kind.LEAD_FOOT;
            case TRAIL_FOOT_FLARE -> Kind.TRAIL_FOOT;
        };
    }

    /** The lines that matter for a reading: the one that shows it, and what it is seen against. */
    public static Set<Kind> mattersFor(ReadingKind kind) {
        Set<Kind> lines = EnumSet.of(shows(kind));
        lines.addAll(
                switch (kind) {
                    case BALL_ABOVE_CROWN, TEE_HEIGHT, TRAIL_HAND_LOWER, KNEE_FLEX, STANCE_WIDTH -> Set.of();
                    case BALL_TO_LEAD_SHOULDER -> Set.of(Kind.PLUMB, Kind.TARGET);
                    case BALL_TO_LEAD_HEEL -> Set.of(Kind.LEAD_SQUARE, Kind.TARGET);
                    case BALL_IN_STANCE -> Set.of(Kind.LEAD_SQUARE, Kind.TRAIL_SQUARE, Kind.TARGET);
                    case LEAD_FOOT_OUTSIDE_SHOULDER -> Set.of(Kind.PLUMB, Kind.LEAD_SQUARE);
                    case STANCE_TO_SHOULDER_WIDTH -> Set.of(Kind.SHOULDERS);
                    case SHOULDERS_TO_FEET -> Set.of(Kind.TOES);
                    case FEET_TO_TARGET, SHOULDERS_TO_TARGET, HEAD_TO_BALL, LEAD_FOOT_FLARE, TRAIL_FOOT_FLARE ->
                        Set.of(Kind.TARGET);
                    case BALL_DISTANCE -> Set.of(Kind.TOES, Kind.TARGET);
                    case SHOULDER_TILT -> Set.of(Kind.LEVEL);
                    case SIDE_BEND, FORWARD_BEND -> Set.of(Kind.UPRIGHT);
                    case SHAFT_LEAN -> Set.of(Kind.SHAFT_UPRIGHT);
                });
        return lines;
    }
}
