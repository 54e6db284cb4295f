package org.toeline.paint;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.toeline.geometry.ImagePoint;
import org.toeline.paint.OverlayShapes.Line;

/** The head of an arrow on a line, at the last place of it that a frame shows. Drawing units. */
record Arrow(Point2D tip, Shape head) {

    private static final int STEPS = 200;

    /** Towards the line's end; empty when the frame shows none of it. */
    static Optional<Arrow> along(Line line, AffineTransform toDevice, Rectangle2D frame, double size) {
        Point2D from = on(line.points().get(0), toDevice);
        Point2D to = on(line.points().get(line.points().size() - 1), toDevice);
        Rectangle2D within = new Rectangle2D.Double(
                frame.getX() + size,
                frame.getY() + size * 0.35,
                frame.getWidth() - 2 * size,
                frame.getHeight() - size * 0.7);
        for (int i = STEPS; i > 0; i--) {
            double f = i / (double) STEPS;
            Point2D at = new Point2D.Double(
                    from.getX() + f * (to.getX() - from.getX()), from.getY() + f * (to.getY() - from.getY()));
            if (within.contains(at)) {
                return Optional.of(new Arrow(
                        at, head(at, Math.atan2(to.getY() - from.getY(), to.getX() - from.getX()), size)));
            }
        }
        return Optional.empty();
    }

    private static Point2D on(ImagePoint p, AffineTransform toDevice) {
        return toDevice.transform(new Point2D.Double(p.xPx(), p.yPx()), null);
    }

    private static Shape head(Point2D tip, double angle, double size) {
        Path2D path = new Path2D.Double();
        path.moveTo(size * 0.5, 0);
        path.lineTo(-size * 0.45, size * 0.4);
        path.lineTo(-size * 0.45, -size * 0.4);
        path.closePath();
        AffineTransform place = AffineTransform.getTranslateInstance(tip.getX(), tip.getY());
        place.rotate(angle);
        return place.createTransformedShape(path);
    }
}
