package org.toeline.desk.bodymap;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import org.toeline.geometry.ImagePoint;

/** Draws a figure in its own box, as in a mirror for a left-handed player. */
record Pen(GraphicsContext g, Way way) {

    /** Which way round. */
    enum Way {
        AS_DRAWN,
        MIRRORED
    }

    double x(ImagePoint p) {
        return way == Way.MIRRORED ? BodyFigure.WIDTH - p.xPx() : p.xPx();
    }

    void lines(Color color, double width, ImagePoint... along) {
        g.setStroke(color);
        g.setLineWidth(width);
        for (int i = 1; i < along.length; i++) {
            g.strokeLine(x(along[i - 1]), along[i - 1].yPx(), x(along[i]), along[i].yPx());
        }
    }

    void area(Color color, double rim, ImagePoint... corners) {
        double[] xs = new double[corners.length];
        double[] ys = new double[corners.length];
        for (int i = 0; i < corners.length; i++) {
            xs[i] = x(corners[i]);
            ys[i] = corners[i].yPx();
        }
        g.setFill(color);
        g.fillPolygon(xs, ys, corners.length);
        g.setStroke(color);
        g.setLineWidth(rim);
        g.strokePolygon(xs, ys, corners.length);
    }

    void oval(Color fill, ImagePoint middle, double width, double height) {
        g.setFill(fill);
        g.fillOval(x(middle) - width / 2, middle.yPx() - height / 2, width, height);
    }

    void rim(Color color, double line, ImagePoint middle, double width, double height) {
        g.setStroke(color);
        g.setLineWidth(line);
        g.strokeOval(x(middle) - width / 2, middle.yPx() - height / 2, width, height);
    }
}
