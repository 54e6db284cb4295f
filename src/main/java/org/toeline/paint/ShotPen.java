package org.toeline.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/**
 * How a setup is told from the other: by colour, by dash and by the shape of its points. Neither colour is one of a verdict.
 */
enum ShotPen {
    FIRST(Ink.GREEN) {
        @Override
        Shape shape(double x, double y, double radius) {
            return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
        }

        @Override
        BasicStroke stroke(float width) {
            return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        }
    },
    SECOND(Ink.PURPLE) {
        @Override
        Shape shape(double x, double y, double radius) {
            double r = 1.3 * radius;
            Path2D diamond = new Path2D.Double();
            diamond.moveTo(x, y - r);
            diamond.lineTo(x + r, y);
            diamond.lineTo(x, y + r);
            diamond.lineTo(x - r, y);
            diamond.closePath();
            return diamond;
        }

        @Override
        BasicStroke stroke(float width) {
            return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {7, 4}, 0);
        }
    };

    private final Color color;

    ShotPen(Color color) {
        this.color = color;
    }

    Color color() {
        return color;
    }

    Color faint(int shots) {
        int alpha = (int) Math.round(255 * Math.max(0.10, Math.min(0.55, 6.0 / Math.max(1, shots))));
        return new Color(color.getRed(), color.getGreen(), color.getBlue(), alpha);
    }

    abstract Shape shape(double x, double y, double radius);

    abstract BasicStroke stroke(float width);

    /** A point with a light edge, so that those upon one another can be told apart. */
    void point(Graphics2D g, double x, double y, double radius) {
        Shape shape = shape(x, y, radius);
        g.setColor(color);
        g.fill(shape);
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke(1));
        g.draw(shape);
    }
}
