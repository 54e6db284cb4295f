package org.toeline.mark;

import java.util.OptionalDouble;
import org.toeline.geometry.Finite;

/**
 * What is known of the lens a picture was taken with, beyond its being a phone's usual main camera. Anything left empty
 * keeps the usual value and spread.
 *
 * @param focalPx      focal length in pixels of the picture as shown
 * @param focalSigmaPx its standard deviation, pixels
 * @param cxPx         x of the principal point; the middle of the picture when empty
 * @param cyPx         y of the principal point
 * @param k1           first radial distortion coefficient (of OpenCV's model, normalised coordinates); 0 when empty
 * @param k2           second radial distortion coefficient
 */
public record LensNote(
        OptionalDouble focalPx,
        OptionalDouble focalSigmaPx,
        OptionalDouble cxPx,
        OptionalDouble cyPx,
        OptionalDouble k1,
        OptionalDouble k2) {

    public static final LensNote NONE = new LensNote(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());

    public LensNote {
        focalPx.ifPresent(f -> Finite.requirePositive(f, "focalPx"));
        focalSigmaPx.ifPresent(s -> Finite.requirePositive(s, "focalSigmaPx"));
        cxPx.ifPresent(c -> Finite.require(c, "cxPx"));
        cyPx.ifPresent(c -> Finite.require(c, "cyPx"));
        k1.ifPresent(k -> Finite.require(k, "k1"));
        k2.ifPresent(k -> Finite.require(k, "k2"));
    }
}
