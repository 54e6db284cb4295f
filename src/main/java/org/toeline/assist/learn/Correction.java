package org.toeline.assist.learn;

import org.toeline.geometry.Finite;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;

/**
 * How far a coach's mark lies from where the program by itself would have suggested it, as shares of the player's span (nose to
 * soles in the picture), so that it carries over to other pictures and players; along the picture's own axes.
 *
 * @param towards along the picture's rows, above zero towards the target face-on and towards the ball down the line, so that
 *                left-handers fit; at most {@value #MOST} either way
 * @param up      along its columns, above zero upwards; likewise
 */
public record Correction(double towards, double up, Kind kind) {

    /** A mark that lies further off than the player is tall is none of that suggestion. */
    static final double MOST = 1;

    /** What the coach did. */
    public enum Kind {
        /** The suggestion was moved, or marked elsewhere. */
        MOVED,
        /** It was looked at by itself and taken as right where it stood. */
        AGREED
    }

    public Correction {
        Finite.require(towards, "towards");
        Finite.require(up, "up");
        if (Math.abs(towards) > MOST || Math.abs(up) > MOST) {
            throw new IllegalArgumentException("a correction is a share of the span: " + towards + ", " + up);
        }
    }

    /** Seen face-on the target, and seen down the line the ball, lies to the right of a right-handed player's picture. */
    private static double rightIsTowards(Handedness hand) {
        return hand == Handedness.RIGHT ? 1 : -1;
    }

    /** @param spanPx of the player in this picture, above zero */
    static Correction between(ImagePoint suggested, ImagePoint marked, double spanPx, Handedness hand, Kind kind) {
        return new Correction(
                bounded(rightIsTowards(hand) * (marked.xPx() - suggested.xPx()) / spanPx),
                bounded((suggested.yPx() - marked.yPx()) / spanPx),
                kind);
    }

    private static double bounded(double share) {
        return Math.max(-MOST, Math.min(MOST, share));
    }

    /** A place moved by shares of the span. */
    static ImagePoint moved(ImagePoint from, double towards, double up, double spanPx, Handedness hand) {
        return from.plus(rightIsTowards(hand) * towards * spanPx, -up * spanPx);
    }
}
