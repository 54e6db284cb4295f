package org.toeline.posture;

import org.toeline.mark.View;

/**
 * A mark that does not fit the rest. It is kept in the reckoning: readings are the mixture of what they are if it is right
 * and if it is wrong, by its odds.
 *
 * @param mark  the landmark's or the floor point's name in documents, or {@code ball}
 * @param offPx how far the mark lies from where the rest puts it, pixels
 * @param odds  how likely the mark is wrong, in [0, 1]
 * @param moves whether the readings heed it; false for a mark against which nothing but the usual build and stance of
 *              people speaks, so that it is only mentioned
 */
public record Doubt(View view, String mark, double offPx, double odds, boolean moves) {

    public Doubt {
        if (!(odds >= 0 && odds <= 1)) {
            throw new IllegalArgumentException("odds " + odds + "; 0 to 1 is allowed");
        }
    }
}
