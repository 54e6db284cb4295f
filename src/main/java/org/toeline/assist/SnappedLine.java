package org.toeline.assist;

import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.VerticalMark;

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

    /** What of it lies in a picture; empty where hardly anything does. */
    Optional<SnappedLine> within(int width, int height) {
        double[] part = {0, 1};
        boolean in = cut(part, from.xPx(), to.xPx(), width) && cut(part, from.yPx(), to.yPx(), height);
        if (!in || (part[1] - part[0]) * from.distancePx(to) < VerticalMark.SHORTEST_PX) {
            return Optional.empty();
        }
        return Optional.of(new SnappedLine(
                at,
                along(part[0], width, height),
                along(part[1], width, height),
                sigmaAcrossPx,
                endSigmaPx,
                barWidthPx));
    }

    private ImagePoint along(double share, int width, int height) {
        double x = from.xPx() + share * (to.xPx() - from.xPx());
        double y = from.yPx() + share * (to.yPx() - from.yPx());
        // rounding may leave it outside by the last digit
        return new ImagePoint(Math.max(0, Math.min(width, x)), Math.max(0, Math.min(height, y)));
    }

    /**
     * Leaves of a stretch, shares of it, what lies between 0 and {@code most}.
     *
     * @param a where it begins
     * @param b where it ends
     */
    private static boolean cut(double[] part, double a, double b, double most) {
        if (a == b) {
            return a >= 0 && a <= most;
        }
        double one = -a / (b - a);
        double other = (most - a) / (b - a);
        part[0] = Math.max(part[0], Math.min(one, other));
        part[1] = Math.min(part[1], Math.max(one, other));
        return part[0] < part[1];
    }
}
