package org.toeline.posture;

import org.toeline.mark.View;

/**
 * A mark that does not fit the rest. It is left out of the reckoning, so that the readings are those of the other marks;
 * that it might be right all the same is not in their intervals.
 *
 * @param mark  the landmark's or the floor point's name in documents, or {@code ball}
 * @param offPx how far the mark lies from where the rest puts it, pixels
 * @param odds  how likely the mark is wrong, in [0, 1]
 * @param moves whether the readings heed it; so far always true. False is for a mark against which nothing but the usual
 *              build and stance of people speaks, so that it is only mentioned
 */
public record Doubt(View view, String mark, double offPx, double odds, boolean moves) {

    public Doubt {
        if (!(odds >= 0 && odds <= 1)) {
            throw new IllegalArgumentException("odds " + odds + "; 0 to 1 is allowed");
        }
    }
}
