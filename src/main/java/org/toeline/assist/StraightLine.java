package org.toeline.assist;

import java.util.List;
import org.toeline.geometry.ImagePoint;

/**
 * A line in a picture by one of its points and its direction.
 *
 * @param angleRad direction, from x right towards y down
 */
record StraightLine(ImagePoint origin, double angleRad) {

    /** Along and across the line, pixels. */
    record Place(double s, double t) {}

    /**
     * A line laid through places, and how well they determine it.
     *
     * @param offset   t at s = 0
     * @param slope    t per s
     * @param scatter  root mean square distance of the places, freedom taken off
     * @param middle   mean s
     * @param squares  sum of squares of s about the middle
     * @param places   how many
     */
    record Fit(double offset, double slope, double scatter, double middle, double squares, int places) {

        double t(double s) {
            return offset + slope * s;
        }

        /** Standard deviation of the line across itself, where it passes s; neighbouring places are half dependent. */
        double sigma(double s) {
            return Math.sqrt(
                    2 * scatter * scatter * (1.0 / places + (s - middle) * (s - middle) / Math.max(1e-9, squares)));
        }
    }

    static StraightLine through(ImagePoint a, ImagePoint b) {
        return new StraightLine(a, Math.atan2(b.yPx() - a.yPx(), b.xPx() - a.xPx()));
    }

    ImagePoint at(double s, double t) {
        double c = Math.cos(angleRad);
        double d = Math.sin(angleRad);
        return origin.plus(s * c - t * d, s * d + t * c);
    }

    Place place(ImagePoint p) {
        double dx = p.xPx() - origin.xPx();
        double dy = p.yPx() - origin.yPx();
        double c = Math.cos(angleRad);
        double d = Math.sin(angleRad);
        return new Place(dx * c + dy * d, dy * c - dx * d);
    }

    /** This line moved onto a fit made in its own coordinates; s = 0 stays where it was, but for the turn. */
    StraightLine onto(Fit fit) {
        return new StraightLine(at(0, fit.offset), angleRad + Math.atan(fit.slope));
    }

    /** Least squares of t over s. At least two places of different s. */
    static Fit fit(List<Place> places) {
        int n = places.size();
        double ms = places.stream().mapToDouble(Place::s).average().orElse(0);
        double mt = places.stream().mapToDouble(Place::t).average().orElse(0);
        double ss = 0;
        double st = 0;
        for (Place p : places) {
            ss += (p.s - ms) * (p.s - ms);
            st += (p.s - ms) * (p.t - mt);
        }
        double slope = ss < 1e-9 ? 0 : st / ss;
        double rest = 0;
        for (Place p : places) {
            double off = p.t - mt - slope * (p.s - ms);
            rest += off * off;
        }
        return new Fit(mt - slope * ms, slope, Math.sqrt(rest / Math.max(1, n - 2)), ms, ss, n);
    }
}
