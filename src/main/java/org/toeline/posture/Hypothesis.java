package org.toeline.posture;

/**
 * What the player is like if certain marks are wrong (or none), and how likely that is.
 *
 * @param probability in (0, 1]; those of a {@link Posture} add up to 1
 * @param coordinates the best estimate under it
 * @param uncertainty the joint uncertainty under it
 */
public record Hypothesis(double probability, Coordinates coordinates, Uncertainty uncertainty) {}
