package org.toeline.assist;

import org.toeline.geometry.Finite;

/**
 * How much what was followed moved while the player stood still: one standard deviation, the root mean square over the
 * marks, following's own noise taken off. Given the marks on the body it is the player's own spread; given marks on the
 * floor, the camera's unrest.
 *
 * @param acrossPx pixels across the picture, zero or more
 * @param upPx     pixels up and down the picture, zero or more
 * @param marks    how many marks it comes from, at least 1
 */
public record Sway(double acrossPx, double upPx, int marks) {

    public Sway {
        Finite.requireNotNegative(acrossPx, "acrossPx");
        Finite.requireNotNegative(upPx, "upPx");
        if (marks < 1) {
            throw new IllegalArgumentException("sway of " + marks + " marks; at least one is needed");
        }
    }
}
