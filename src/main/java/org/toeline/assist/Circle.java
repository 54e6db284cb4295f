package org.toeline.assist;

import java.util.List;

/** A circle in a picture, pixels, and the least-squares fit of one to points of its rim. */
record Circle(double x, double y, double r) {

    /**
     * A point of a rim.
     *
     * @param change how much whiteness falls there, outwards
     */
    record RimPoint(double x, double y, double change) {}

    /** How differently two are drawn: middles apart and radii apart, pixels. */
    double apart(Circle other) {
        return Math.hypot(x - other.x, y - other.y) + Math.abs(r - other.r);
    }

    /** Whether another one, smaller, has its middle inside. */
    boolean surrounds(Circle other) {
        return other.r < r && Math.hypot(x - other.x, y - other.y) < r;
    }

    /** How far a point lies outside. */
    double outside(RimPoint p) {
        return Math.hypot(p.x - x, p.y - y) - r;
    }

    /** The circle through three points; radius not finite when they lie on a line. */
    static Circle through(RimPoint a, RimPoint b, RimPoint c) {
        double d = 2 * (a.x * (b.y - c.y) + b.x * (c.y - a.y) + c.x * (a.y - b.y));
        double aa = a.x * a.x + a.y * a.y;
        double bb = b.x * b.x + b.y * b.y;
        double cc = c.x * c.x + c.y * c.y;
        double cx = (aa * (b.y - c.y) + bb * (c.y - a.y) + cc * (a.y - b.y)) / d;
        double cy = (aa * (c.x - b.x) + bb * (a.x - c.x) + cc * (b.x - a.x)) / d;
        return new Circle(cx, cy, Math.hypot(a.x - cx, a.y - cy));
    }

    /** The circle nearest to the points, by Gauss and Newton from this one. */
    Circle fitted(List<RimPoint> points) {
        Circle circle = this;
        for (int round = 0; round < 8; round++) {
            double[][] n = new double[3][4];
            for (RimPoint p : points) {
                double dx = p.x - circle.x;
                double dy = p.y - circle.y;
                double l = Math.max(1e-9, Math.hypot(dx, dy));
                double[] row = {dx / l, dy / l, 1, l - circle.r};
                for (int i = 0; i < 3; i++) {
                    for (int j = 0; j < 4; j++) {
                        n[i][j] += row[i] * row[j];
                    }
                }
            }
            double[] step = solved(n);
            circle = new Circle(circle.x + step[0], circle.y + step[1], circle.r + step[2]);
        }
        return circle;
    }

    /** Three equations by elimination; the points surround enough of the circle for it to be well posed. */
    private static double[] solved(double[][] n) {
        for (int i = 0; i < 3; i++) {
            for (int k = i + 1; k < 3; k++) {
                double f = n[k][i] / n[i][i];
                for (int j = i; j < 4; j++) {
                    n[k][j] -= f * n[i][j];
                }
            }
        }
        double[] x = new double[3];
        for (int i = 2; i >= 0; i--) {
            double sum = n[i][3];
            for (int j = i + 1; j < 3; j++) {
                sum -= n[i][j] * x[j];
            }
            x[i] = sum / n[i][i];
        }
        return x;
    }
}
