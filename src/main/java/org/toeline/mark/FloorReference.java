package org.toeline.mark;

import org.toeline.geometry.Finite;
import org.toeline.language.Sentences;

/**
 * A point of the floor whose place was measured: the end of a rod, the corner of a mat.
 *
 * @param id what it is called in the document and on screen; not blank, unique in its layout
 * @param t  metres towards the target, from any origin that the whole layout shares
 * @param h  metres to the player's side, from the same origin
 */
public record FloorReference(String id, double t, double h) {

    public FloorReference {
        if (id.isBlank()) {
            throw new IllegalArgumentException(
                    Sentences.of(FloorReference.class).of("floor.no-name"));
        }
        Finite.require(t, "t");
        Finite.require(h, "h");
    }
}
