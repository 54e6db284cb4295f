package org.toeline.assist;

import java.util.OptionalDouble;
import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;

/**
 * A straight edge, or the middle of a thin bar, found near a click or along a drag.
 *
 * @param at            the click dropped onto the line (of a drag, its middle)
 * @param from          the near end of the stretch the line was seen along, or the drag's first end dropped onto it
 * @param to            the far end
 * @param sigmaAcrossPx standard deviation of {@code at} across the line, pixels, above zero
 * @param endSigmaPx    standard deviation of {@code from} and {@code to} across the line, the larger, pixels
 * @param barWidthPx    width of the bar whose middle it is, as blur shows it; empty for a plain edge
 */
public record SnappedLine(
        ImagePoint at,
        ImagePoint from,
        ImagePoint to,
        double sigmaAcrossPx,
        double endSigmaPx,
        OptionalDouble barWidthPx) {

    public SnappedLine {
        Finite.requirePositive(sigmaAcrossPx, "sigmaAcrossPx");
        Finite.requirePositive(endSigmaPx, "endSigmaPx");
        barWidthPx.ifPresent(w -> Finite.requirePositive(w, "barWidthPx"));
    }

    /** Direction, from x right towards y down, radians in (−π, π]. */
    public double directionRad() {
        return Math.atan2(to.yPx() - from.yPx(), to.xPx() - from.xPx());
    }
}
