package org.toeline.flight.compare;

import java.util.ArrayList;
import java.util.List;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/**
 * How many shots of each setup went to one side of the target line, and how much more of the second: the difference of two
 * shares with its 95 % interval by Newcombe's hybrid of Wilson's scores (Newcombe 1998, Stat. Med. 17:873, method 10).
 *
 * @param side   the left or the right, as seen looking at the target
 * @param figure where the ball landed, or if that is not known where it started
 * @param before so many of the first setup
 * @param of     of so many
 * @param after  so many of the second
 * @param ofThen of so many
 */
public record SharesOfSides(
        Side side, ShotFigure figure, int before, int of, int after, int ofThen, double low, double high) {

    private static final double NORMAL_95 = 1.959964;
    private static final int LEAST = 5;

    /** A side of the target line, looking at the target. */
    public enum Side {
        LEFT,
        RIGHT
    }

    /** Second share less the first. */
    public double difference() {
        return (double) after / ofThen - (double) before / of;
    }

    public boolean real() {
        return low > 0 || high < 0;
    }

    /** Both sides; nothing where too few shots tell where they went. */
    static List<SharesOfSides> of(List<Shot> before, List<Shot> after) {
        List<SharesOfSides> all = new ArrayList<>();
        for (ShotFigure figure : List.of(ShotFigure.SIDE, ShotFigure.LAUNCH_DIRECTION)) {
            double[] a = before.stream()
                    .flatMapToDouble(s -> s.figure(figure).stream())
                    .toArray();
            double[] b = after.stream()
                    .flatMapToDouble(s -> s.figure(figure).stream())
                    .toArray();
            if (Math.min(a.length, b.length) >= LEAST) {
                for (Side side : Side.values()) {
                    int sign = side == Side.LEFT ? 1 : -1;
                    all.add(of(side, figure, count(a, sign), a.length, count(b, sign), b.length));
                }
                return all;
            }
        }
        return all;
    }

    private static int count(double[] values, int sign) {
        int n = 0;
        for (double v : values) {
            n += v * sign > 0 ? 1 : 0;
        }
        return n;
    }

    static SharesOfSides of(Side side, ShotFigure figure, int before, int of, int after, int ofThen) {
        double[] first = wilson(before, of);
        double[] second = wilson(after, ofThen);
        double p = (double) before / of;
        double q = (double) after / ofThen;
        double low = q - p - Math.hypot(q - second[0], first[1] - p);
        double high = q - p + Math.hypot(second[1] - q, p - first[0]);
        return new SharesOfSides(side, figure, before, of, after, ofThen, low, high);
    }

    private static double[] wilson(int k, int n) {
        double z2 = NORMAL_95 * NORMAL_95;
        double p = (double) k / n;
        double middle = (p + z2 / (2 * n)) / (1 + z2 / n);
        double half = NORMAL_95 * Math.sqrt(p * (1 - p) / n + z2 / (4.0 * n * n)) / (1 + z2 / n);
        return new double[] {middle - half, middle + half};
    }
}
