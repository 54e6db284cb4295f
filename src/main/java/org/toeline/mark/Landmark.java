package org.toeline.mark;

import java.util.Optional;

/**
 * A place on the player or the club that can be marked. Names follow the bony points of the ISB recommendations (Wu et
 * al. 2005) and ISO 7250-1: a shoulder is the acromion, a wrist the middle between the two styloids, a hip the greater
 * trochanter, a knee the middle between the epicondyles, an ankle the middle between the malleoli. A heel and a toe are
 * the rearmost and the foremost point of the shoe where it meets the ground.
 */
public enum Landmark {
    LEAD_SHOULDER("lead-shoulder", Side.LEAD),
    TRAIL_SHOULDER("trail-shoulder", Side.TRAIL),
    LEAD_ELBOW("lead-elbow", Side.LEAD),
    TRAIL_ELBOW("trail-elbow", Side.TRAIL),
    LEAD_WRIST("lead-wrist", Side.LEAD),
    TRAIL_WRIST("trail-wrist", Side.TRAIL),
    LEAD_HIP("lead-hip", Side.LEAD),
    TRAIL_HIP("trail-hip", Side.TRAIL),
    LEAD_KNEE("lead-knee", Side.LEAD),
    TRAIL_KNEE("trail-knee", Side.TRAIL),
    LEAD_ANKLE("lead-ankle", Side.LEAD),
    TRAIL_ANKLE("trail-ankle", Side.TRAIL),
    LEAD_HEEL("lead-heel", Side.LEAD),
    TRAIL_HEEL("trail-heel", Side.TRAIL),
    LEAD_TOE("lead-toe", Side.LEAD),
    TRAIL_TOE("trail-toe", Side.TRAIL),
    /** The middle of the head, between the ears. */
    HEAD_CENTRE("head-centre", Side.MIDDLE),
    /** The base of the neck (seventh cervical vertebra). */
    NECK("neck", Side.MIDDLE),
    /** The middle of the club head where the shaft's line meets the ground. */
    CLUB_HEAD("club-head", Side.MIDDLE),
    /** The end of the grip, the butt of the club. */
    GRIP_END("grip-end", Side.MIDDLE),
    /** The top line of the soled club head; marked in the tee view. */
    CROWN("crown", Side.MIDDLE),
    /** The ground at the tee, straight below the ball; marked in the tee view. */
    GROUND("ground", Side.MIDDLE);

    /** The side of the player a landmark belongs to. */
    public enum Side {
        LEAD,
        TRAIL,
        MIDDLE
    }

    private final String id;
    private final Side side;

    Landmark(String id, Side side) {
        this.id = id;
        this.side = side;
    }

    /** The name in documents. */
    public String id() {
        return id;
    }

    public Side side() {
        return side;
    }

    public static Optional<Landmark> of(String id) {
        for (Landmark landmark : values()) {
            if (landmark.id.equals(id)) {
                return Optional.of(landmark);
            }
        }
        return Optional.empty();
    }
}
