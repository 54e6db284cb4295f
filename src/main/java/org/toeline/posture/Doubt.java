package org.toeline.posture;

import org.toeline.mark.View;

/**
 * A mark that does not fit the rest. It stays in the reckoning: whatever depends on it is the mixture of “it is right”
 * and “it is wrong”.
 *
 * @param mark  the landmark's or the floor point's name in documents, or {@code ball}
 * @param offPx how far the mark lies from where the rest puts it, pixels
 * @param odds  how likely the mark is wrong, in [0, 1]
 * @param moves whether the readings heed it; false where nothing but the usual build and stance of people speaks against
 *              the mark, so that it is only mentioned
 */
public record Doubt(View view, String mark, double offPx, double odds, boolean moves) {

    public Doubt {
        if (!(odds >= 0 && odds <= 1)) {
            throw new IllegalArgumentException("odds " + odds + "; 0 to 1 is allowed");
        }
    }
}
