package org.toeline.assist;

/**
 * The moment of address: the player stands still before taking the club away. Seconds in the clip's presentation time.
 *
 * @param addressSeconds the frame suggested, within the span
 */
public record StillSpan(double startSeconds, double endSeconds, double addressSeconds) {
}
