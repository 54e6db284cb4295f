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
        double a = HALF * Math.sqrt(middle + apart);
        double b = HALF * Math.sqrt(Math.max(0, middle - apart));
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.rotate(turned);
        return Optional.of(place.createTransformedShape(new Ellipse2D.Double(-a, -b, 2 * a, 2 * b)));
    }
}
