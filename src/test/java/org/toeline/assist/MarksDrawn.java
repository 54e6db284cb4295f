package org.toeline.assist;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.Optional;
import org.toeline.geometry.ImagePoint;

/** Suggested marks on a part of a picture, in the desk's colours: rings with a free middle, dashed; and where things truly are. */
final class MarksDrawn {

    static final Color PLACED = new Color(0xF0E442);
    static final Color FLOOR = new Color(0x56B4E9);
    private static final Color WRONG = new Color(0xD55E00);
    private static final Color HALO = new Color(0, 0, 0, 165);
    private static final double RADIUS = 6;
    private static final double CROSS = 8;
    private static final double FREE = 3.5;

    private final Graphics2D g;
    private final double xPx;
    private final double yPx;
    private final double scale;

    /** @param xPx left edge of the part in the picture, which is drawn so many times as large */
    MarksDrawn(Graphics2D g, double xPx, double yPx, double scale) {
        this.g = g;
        this.xPx = xPx;
        this.yPx = yPx;
        this.scale = scale;
    }

    private double x(ImagePoint p) {
        return (p.xPx() - xPx) * scale;
    }

    private double y(ImagePoint p) {
        return (p.yPx() - yPx) * scale;
    }

    void ring(ImagePoint at, Color color) {
        circle(at, RADIUS, color);
    }

    void ball(ImagePoint centre, double diameterPx) {
        circle(centre, diameterPx / 2 * scale, PLACED);
    }

    private void circle(ImagePoint at, double r, Color color) {
        dashed(new Ellipse2D.Double(x(at) - r, y(at) - r, 2 * r, 2 * r), color);
    }

    void line(ImagePoint a, ImagePoint b) {
        dashed(new Line2D.Double(x(a), y(a), x(b), y(b)), FLOOR);
    }

    private void dashed(Shape shape, Color color) {
        stroke(shape, HALO, 3.5f);
        g.setColor(color);
        g.setStroke(new BasicStroke(1.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {4, 3}, 0));
        g.draw(shape);
    }

    /** A cross with a free middle where it is, and a line to where it was suggested. */
    void truth(ImagePoint at, Optional<ImagePoint> suggested) {
        suggested.ifPresent(p -> stroke(new Line2D.Double(x(at), y(at), x(p), y(p)), WRONG, 1.8f));
        for (int dx = -1; dx <= 1; dx += 2) {
            for (int dy = -1; dy <= 1; dy += 2) {
                Shape arm =
                        new Line2D.Double(x(at) + dx * FREE, y(at) + dy * FREE, x(at) + dx * CROSS, y(at) + dy * CROSS);
                stroke(arm, HALO, 3.5f);
                stroke(arm, Color.WHITE, 1.6f);
            }
        }
    }

    private void stroke(Shape shape, Color color, float width) {
        g.setColor(color);
        g.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
    }
}
