package org.toeline.mark;

import java.util.OptionalDouble;
import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;

/**
 * The ball's outline in a picture.
 *
 * @param diameterPx      mean diameter of the outline, pixels; empty when only the centre was marked
 * @param sigmaPx         standard deviation of the centre in each direction, pixels
 * @param diameterSigmaPx standard deviation of the diameter, pixels
 * @param origin          whether somebody placed or accepted it
 */
public record BallMark(
        ImagePoint centre, OptionalDouble diameterPx, double sigmaPx, double diameterSigmaPx, Mark.Origin origin) {

    /** The spread assumed of a diameter that states none, pixels. */
    public static final double USUAL_DIAMETER_SIGMA_PX = 1.0;

    public BallMark(ImagePoint centre, OptionalDouble diameterPx, double sigmaPx, double diameterSigmaPx) {
        this(centre, diameterPx, sigmaPx, diameterSigmaPx, Mark.Origin.PLACED);
    }

    public BallMark {
        diameterPx.ifPresent(d -> Finite.requirePositive(d, "diameterPx"));
        Finite.requirePositive(sigmaPx, "sigmaPx");
        Finite.requirePositive(diameterSigmaPx, "diameterSigmaPx");
    }

    public BallMark accepted() {
        return new BallMark(centre, diameterPx, sigmaPx, diameterSigmaPx);
    }
}
