package org.toeline.scene;

/**
 * How far the player is from the address at one moment.
 *
 * @param swayT     pelvis and trunk towards the target, metres
 * @param swayH     pelvis and trunk away from the ball, metres
 * @param dip       pelvis and trunk down, metres
 * @param turnRad   shoulders, arms and club turned away from the target about the trunk
 * @param liftRad   arms and club raised about the shoulders
 * @param waggleRad club taken back about the hands
 */
record Deviation(double swayT, double swayH, double dip, double turnRad, double liftRad, double waggleRad) {

    static final Deviation NONE = new Deviation(0, 0, 0, 0, 0, 0);
}
