package org.toeline.desk.lesson;

import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;

/**
 * Both ends of a rod or an upright, placed with one stroke.
 *
 * @param item        the upright, or the floor point at one end of the stroke; the other end is that of the same rod, and
 *                    which is which follows from how the stroke runs in the picture
 * @param fromSigmaPx standard deviation of that end, pixels
 */
public record LineMark(Item item, ImagePoint from, double fromSigmaPx, ImagePoint to, double toSigmaPx) {

    public LineMark {
        Finite.requirePositive(fromSigmaPx, "fromSigmaPx");
        Finite.requirePositive(toSigmaPx, "toSigmaPx");
    }
}
