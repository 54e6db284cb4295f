package org.toeline.desk.picture;

import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.paint.Color;
import org.toeline.geometry.ImagePoint;

/** A magnifier: a square of the picture around a point, pixels visible, with a cross whose middle is free. */
final class Loupe extends Canvas {

    private static final double SIDE = 190;
    private static final double TIMES = 8;

    Loupe() {
        super(SIDE, SIDE);
        setMouseTransparent(true);
        setVisible(false);
        setId("loupe");
    }

    /** Shows what is around a point of the picture. */
    void show(Image image, ImagePoint at) {
        GraphicsContext g = getGraphicsContext2D();
        double span = SIDE / TIMES;
        g.setImageSmoothing(false);
        g.setFill(Color.BLACK);
        g.fillRect(0, 0, SIDE, SIDE);
        double x = at.xPx() - span / 2;
        double y = at.yPx() - span / 2;
        double sx = Math.max(0, x);
        double sy = Math.max(0, y);
        double ex = Math.min(image.getWidth(), x + span);
        double ey = Math.min(image.getHeight(), y + span);
        if (ex > sx && ey > sy) {
            g.drawImage(
                    image,
                    sx,
                    sy,
                    ex - sx,
                    ey - sy,
                    (sx - x) * TIMES,
                    (sy - y) * TIMES,
                    (ex - sx) * TIMES,
                    (ey - sy) * TIMES);
        }
        double c = SIDE / 2;
        cross(g, c, Color.color(0, 0, 0, 0.7), 3);
        cross(g, c, Color.web("#F0E442"), 1.2);
        g.setStroke(Color.WHITE);
        g.setLineWidth(2);
        g.strokeRect(1, 1, SIDE - 2, SIDE - 2);
    }

    private static void cross(GraphicsContext g, double c, Color color, double width) {
        g.setStroke(color);
        g.setLineWidth(width);
        double free = 7;
        g.strokeLine(4, c, c - free, c);
        g.strokeLine(c + free, c, SIDE - 4, c);
        g.strokeLine(c, 4, c, c - free);
        g.strokeLine(c, c + free, c, SIDE - 4);
    }
}
