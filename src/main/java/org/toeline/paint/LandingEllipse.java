package org.toeline.paint;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.Optional;
import org.toeline.geometry.ImagePoint;

/** Where about half of many points lie: the ellipse of their covariance that holds half of a normal distribution. */
final class LandingEllipse {

    /** Fewer have no shape. */
    private static final int LEAST = 5;
    /** Half of a normal distribution in two dimensions lies within this many standard deviations: √(2 ln 2). */
    private static final double HALF = Math.sqrt(2 * Math.log(2));

    /** Points on a line have no ellipse to speak of. */
    private static final double FLAT = 1e-9;

    private LandingEllipse() {}

    static Optional<Shape> of(List<ImagePoint> points) {
        int n = points.size();
        if (n < LEAST) {
            return Optional.empty();
        }
        double x = points.stream().mapToDouble(ImagePoint::xPx).average().orElseThrow();
        double y = points.stream().mapToDouble(ImagePoint::yPx).average().orElseThrow();
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (ImagePoint p : points) {
            xx += (p.xPx() - x) * (p.xPx() - x) / (n - 1);
            yy += (p.yPx() - y) * (p.yPx() - y) / (n - 1);
            xy += (p.xPx() - x) * (p.yPx() - y) / (n - 1);
        }
        double middle = (xx + yy) / 2;
        double apart = Math.hypot((xx - yy) / 2, xy);
        double turned = Math.atan2(2 * xy, xx - yy) / 2;
        double half = half(points, new double[] {x, y}, new double[] {xx, yy, xy});
        double a = half * Math.sqrt(middle + apart);
        double b = half * Math.sqrt(Math.max(0, middle - apart));
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.rotate(turned);
        return Optional.of(place.createTransformedShape(new Ellipse2D.Double(-a, -b, 2 * a, 2 * b)));
    }

    /** Within so many standard deviations half of the points lie, whatever a mishit did to the deviations. */
    private static double half(List<ImagePoint> points, double[] centre, double[] spread) {
        double det = spread[0] * spread[1] - spread[2] * spread[2];
        if (det <= FLAT * spread[0] * spread[1]) {
            return HALF;
        }
        double[] away = points.stream()
                .mapToDouble(p -> {
                    double dx = p.xPx() - centre[0];
                    double dy = p.yPx() - centre[1];
                    return Math.sqrt((spread[1] * dx * dx - 2 * spread[2] * dx * dy + spread[0] * dy * dy) / det);
                })
                .sorted()
                .toArray();
        return (away[(away.length - 1) / 2] + away[away.length / 2]) / 2;
    }
}
