package org.toeline.scene;

import org.toeline.geometry.Finite;

/**
 * How the player stands to the ball. Lengths in metres, angles in degrees (as people write them down), signs as in the
 * readings.
 *
 * @param ballToLeadShoulderM t(ball) − t(lead shoulder)
 * @param footOutsideM        t(lead heel) − t(lead shoulder)
 * @param stanceM             distance between the heels
 * @param feetDeg             heading of the toe line, positive open
 * @param shouldersToFeetDeg  heading of the shoulders less that of the toe line
 * @param tiltDeg             elevation of the shoulder line
 * @param sideBendDeg         lean of the trunk away from the target
 * @param forwardBendDeg      lean of the trunk towards the ball
 * @param leadFlareDeg        lead foot turned out
 * @param trailFlareDeg       trail foot turned out
 * @param ballDistanceM       h of the toe line at the ball
 * @param kneeFlexDeg         180° less the angle hip–knee–ankle of the trail leg
 * @param hipsBehindToesM     h of the middle of the hips less that of the middle of the toes
 * @param shaftLeanDeg        grip towards the target
 */
public record Address(
        double ballToLeadShoulderM,
        double footOutsideM,
        double stanceM,
        double feetDeg,
        double shouldersToFeetDeg,
        double tiltDeg,
        double sideBendDeg,
        double forwardBendDeg,
        double leadFlareDeg,
        double trailFlareDeg,
        double ballDistanceM,
        double kneeFlexDeg,
        double hipsBehindToesM,
        double shaftLeanDeg) {

    public Address {
        Finite.require(ballToLeadShoulderM, "ballToLeadShoulderM");
        Finite.require(footOutsideM, "footOutsideM");
        Finite.requirePositive(stanceM, "stanceM");
        Finite.requirePositive(ballDistanceM, "ballDistanceM");
        Finite.requirePositive(kneeFlexDeg, "kneeFlexDeg");
        Finite.require(feetDeg + shouldersToFeetDeg + tiltDeg + sideBendDeg + forwardBendDeg, "angles of the body");
        Finite.require(leadFlareDeg + trailFlareDeg + shaftLeanDeg, "angles of feet and shaft");
        Finite.require(hipsBehindToesM, "hipsBehindToesM");
    }
}
