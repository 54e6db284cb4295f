package org.toeline.advice;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.toeline.reading.ReadingKind;

/** What a reading is about: several readings may tell of one thing, such as three of where the ball lies. */
public enum Topic {
    TEE,
    BALL,
    LEAD_FOOT,
    STANCE,
    FEET,
    SHOULDERS,
    TILT,
    TRAIL_HAND,
    SIDE_BEND,
    HEAD,
    SHAFT,
    FORWARD_BEND,
    KNEE,
    BALL_DISTANCE,
    HANDS,
    LEAD_FLARE,
    TRAIL_FLARE;

    public static Topic of(ReadingKind kind) {
        return switch (kind) {
            case BALL_ABOVE_CROWN, TEE_HEIGHT -> TEE;
            case BALL_TO_LEAD_SHOULDER, BALL_IN_STANCE, BALL_TO_LEAD_HEEL -> BALL;
            case LEAD_FOOT_OUTSIDE_SHOULDER -> LEAD_FOOT;
            case STANCE_WIDTH, STANCE_TO_SHOULDER_WIDTH -> STANCE;
            case FEET_TO_TARGET -> FEET;
            case SHOULDERS_TO_TARGET, SHOULDERS_TO_FEET -> SHOULDERS;
            case SHOULDER_TILT -> TILT;
            case TRAIL_HAND_LOWER -> TRAIL_HAND;
            case SIDE_BEND -> SIDE_BEND;
            case HEAD_TO_BALL -> HEAD;
            case SHAFT_LEAN -> SHAFT;
            case FORWARD_BEND -> FORWARD_BEND;
            case KNEE_FLEX -> KNEE;
            case BALL_DISTANCE -> BALL_DISTANCE;
            case LEAD_FOOT_FLARE -> LEAD_FLARE;
            case TRAIL_FOOT_FLARE -> TRAIL_FLARE;
            case HANDS_TO_BODY -> HANDS;
        };
    }

    /** The readings that tell of it, in the order of the catalogue. */
    public List<ReadingKind> readings() {
        return Arrays.stream(ReadingKind.values()).filter(k -> of(k) == this).toList();
    }

    /** The name in the keys of phrases. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
