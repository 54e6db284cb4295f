package org.toeline.flight;

import org.toeline.geometry.WorldPoint;

/**
 * The ball at one time of its flight.
 *
 * @param timeS       since the launch
 * @param place       in the world frame, the origin where the ball lay
 * @param speedMps    over the ground
 * @param spinRadPerS rate of spin
 */
public record FlightPoint(double timeS, WorldPoint place, double speedMps, double spinRadPerS) {}
