package org.toeline.window;

import java.util.List;
import java.util.Optional;

/** Where a clip's picture lies in another one: two squares of one colour in it tell, however it was scaled and cut. */
record Placed(double scale, double x, double y) {

    static final int SQUARE = 14;

    /** Squares that lie in another direction than these are those of another clip. */
    private static final double TURNED = 0.02;

    /**
     * Empty where there is none, or none large enough to be read.
     *
     * @param one   the upper square's corner in the clip
     * @param other the lower one's
     */
    static Optional<Placed> in(Picture picture, int[] one, int[] other) {
        List<double[]> squares = picture.squares();
        if (squares.size() != 2) {
            return Optional.empty();
        }
        double[] a = squares.get(0)[1] < squares.get(1)[1] ? squares.get(0) : squares.get(1);
        double[] b = a == squares.get(0) ? squares.get(1) : squares.get(0);
        double turned = Math.atan2(b[1] - a[1], b[0] - a[0]) - Math.atan2(other[1] - one[1], other[0] - one[0]);
        if (Math.abs(Math.sin(turned)) > TURNED) {
            return Optional.empty();
        }
        double scale = Math.hypot(b[0] - a[0], b[1] - a[1]) / Math.hypot(other[0] - one[0], other[1] - one[1]);
        double half = (SQUARE - 1) / 2.0;
        return Optional.of(new Placed(scale, a[0] - scale * (one[0] + half), a[1] - scale * (one[1] + half)));
    }

    /** A filter of FFmpeg that draws a square of that colour. */
    static String square(int[] corner) {
        return "drawbox=x=%d:y=%d:w=%d:h=%d:color=magenta:t=fill".formatted(corner[0], corner[1], SQUARE, SQUARE);
    }

    int x(double clipX) {
        return (int) Math.round(x + scale * clipX);
    }

    int y(double clipY) {
        return (int) Math.round(y + scale * clipY);
    }
}
