package org.toeline.scene;

import org.toeline.geometry.Finite;
import org.toeline.geometry.GolfBall;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Club;

/**
 * A club and the ball it is soled behind.
 *
 * @param club       what kind it is
 * @param lengthM    from the ground along the shaft to the end of the grip
 * @param headM      height of the soled head's top line
 * @param teeHeightM underside of the ball above the ground
 */
public record ClubModel(Club club, double lengthM, double headM, double teeHeightM) {

    /** Diameter of the ball, metres: the least that the Equipment Rules allow (Part 4). */
    public static final double BALL_M = GolfBall.LEAST_DIAMETER_M;

    public ClubModel {
        Finite.requirePositive(lengthM, "lengthM");
        Finite.requirePositive(headM, "headM");
        Finite.requireNotNegative(teeHeightM, "teeHeightM");
    }

    boolean isWood() {
        return club == Club.DRIVER || club == Club.FAIRWAY_WOOD || club == Club.HYBRID;
    }

    /** Centre of the ball. */
    public WorldPoint ball() {
        return new WorldPoint(0, 0, teeHeightM + BALL_M / 2);
    }

    /** Where the line of the shaft meets the ground. */
    Vec shaftFoot() {
        return isWood() ? new Vec(-0.047, 0.036, 0) : new Vec(-0.036, 0.044, 0);
    }
}
