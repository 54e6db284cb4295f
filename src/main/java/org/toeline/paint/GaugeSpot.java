package org.toeline.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.toeline.geometry.ImagePoint;

/**
 * Which part of a picture is shown and where the gauge stands on it: of some parts and some places, those where the gauge
 * hides least of the player and of the lines, and stands nearest to its line.
 *
 * @param part  of the picture, in its pixels
 * @param gauge in the drawing
 */
public record GaugeSpot(Rectangle2D part, Rectangle2D gauge) {

    private static final double MARGIN = 28;
    private static final double KEPT_CLEAR = 22;
    private static final int ACROSS = 6;
    private static final int DOWN = 12;
    /** What hiding a point of the player counts, in drawing units of distance from the line; a line counts threefold. */
    private static final double A_POINT = 150;
    /** What a part twice as wide counts. */
    private static final double A_SMALLER_PLAYER = 1200;

    /** @param around what the gauge belongs to, {@code player} and {@code lines} what it should not hide: picture pixels */
    public static GaugeSpot best(
            List<Rectangle2D> parts,
            Rectangle2D frame,
            double width,
            double height,
            ImagePoint around,
            List<ImagePoint> player,
            List<ImagePoint> lines) {
        GaugeSpot best = new GaugeSpot(
                parts.get(0), new Rectangle2D.Double(frame.getX() + MARGIN, frame.getY() + MARGIN, width, height));
        double least = Double.POSITIVE_INFINITY;
        for (Rectangle2D part : parts) {
            double small = A_SMALLER_PLAYER * (part.getWidth() / parts.get(0).getWidth() - 1);
            double scale = frame.getWidth() / part.getWidth();
            AffineTransform to = new AffineTransform(
                    scale, 0, 0, scale, frame.getX() - scale * part.getX(), frame.getY() - scale * part.getY());
            List<Point2D> body = on(to, player);
            List<Point2D> drawn = on(to, lines);
            Point2D anchor = on(to, List.of(around)).get(0);
            for (int i = 0; i <= ACROSS * DOWN + ACROSS + DOWN; i++) {
                double fx = i % (ACROSS + 1) / (double) ACROSS;
                double fy = i / (ACROSS + 1) / (double) DOWN;
                Rectangle2D gauge = new Rectangle2D.Double(
                        frame.getX() + MARGIN + fx * (frame.getWidth() - 2 * MARGIN - width),
                        frame.getY() + MARGIN + fy * (frame.getHeight() - 2 * MARGIN - height),
                        width,
                        height);
                double cost = hidden(gauge, body) * A_POINT
                        + hidden(gauge, drawn) * 3 * A_POINT
                        + small
                        + anchor.distance(gauge.getCenterX(), gauge.getCenterY());
                if (cost < least) {
                    least = cost;
                    best = new GaugeSpot(part, gauge);
                }
            }
        }
        return best;
    }

    private static List<Point2D> on(AffineTransform to, List<ImagePoint> points) {
        List<Point2D> out = new ArrayList<>();
        points.forEach(p -> out.add(to.transform(new Point2D.Double(p.xPx(), p.yPx()), null)));
        return out;
    }

    private static long hidden(Rectangle2D gauge, List<Point2D> points) {
        Rectangle2D clear = new Rectangle2D.Double(
                gauge.getX() - KEPT_CLEAR,
                gauge.getY() - KEPT_CLEAR,
                gauge.getWidth() + 2 * KEPT_CLEAR,
                gauge.getHeight() + 2 * KEPT_CLEAR);
        return points.stream().filter(clear::contains).count();
    }
}
