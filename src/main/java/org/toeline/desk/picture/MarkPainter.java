package org.toeline.desk.picture;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.MarkOrder;
import org.toeline.desk.lesson.Marking;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.ViewMarks;

/**
 * Draws the marks themselves: rings with a free middle, so that the pixel under a mark can be seen. A placed mark is a
 * full ring, a suggested one dashed, one in doubt has a cross beside it; the selected one is larger.
 */
final class MarkPainter {

    private static final Color HALO = Color.color(0, 0, 0, 0.65);
    private static final Color PLACED = Color.web("#F0E442");
    private static final Color FLOOR = Color.web("#56B4E9");
    private static final Color DOUBT = Color.web("#D55E00");
    private static final double RADIUS = 6;

    private final GraphicsContext g;
    private final PictureTransform transform;

    MarkPainter(GraphicsContext g, PictureTransform transform) {
        this.g = g;
        this.transform = transform;
    }

    /** @param doubted names of marks of this view that do not fit the rest */
    void paint(ViewMarks view, Optional<Item> selected, Set<String> doubted) {
        for (Item item : Marking.marked(view)) {
            boolean chosen = selected.equals(Optional.of(item));
            List<ImagePoint> handles = Marking.handles(view, item);
            boolean doubt = doubted.contains(item instanceof Item.OfFloor f ? f.pointId() : item.name());
            Look look = doubt ? Look.DOUBTED : MarkOrder.suggested(view, item) ? Look.DASHED : Look.FULL;
            if (item instanceof Item.OfBall) {
                ball(view.ball().orElseThrow(), chosen, look);
            } else if (item instanceof Item.OfVertical) {
                line(handles.get(0), handles.get(1), look);
                handles.forEach(p -> ring(p, FLOOR, chosen, look == Look.DASHED ? Look.DASHED : Look.FULL));
            } else {
                Color placed = item instanceof Item.OfFloor ? FLOOR : PLACED;
                ring(handles.get(0), doubt ? DOUBT : placed, chosen, look);
            }
        }
    }

    private enum Look {
        FULL,
        DASHED,
        DOUBTED
    }

    private void ring(ImagePoint at, Color color, boolean chosen, Look look) {
        double x = transform.deviceX(at);
        double y = transform.deviceY(at);
        double r = chosen ? RADIUS * 1.6 : RADIUS;
        dashed(look);
        circle(x, y, r, HALO, 4);
        circle(x, y, r, color, chosen ? 2.4 : 1.8);
        g.setLineDashes(null);
        if (chosen) {
            for (int i = 0; i < 4; i++) {
                double dx = i == 0 ? 1 : i == 1 ? -1 : 0;
                double dy = i == 2 ? 1 : i == 3 ? -1 : 0;
                stroke(x + dx * (r + 1), y + dy * (r + 1), x + dx * (r + 7), y + dy * (r + 7), color);
            }
        }
        if (look == Look.DOUBTED) {
            stroke(x + r + 3, y - r - 9, x + r + 11, y - r - 1, color);
            stroke(x + r + 3, y - r - 1, x + r + 11, y - r - 9, color);
        }
    }

    private void ball(BallMark ball, boolean chosen, Look look) {
        double r = Math.max(3, transform.scale() * ball.diameterPx().orElse(10) / 2);
        double x = transform.deviceX(ball.centre());
        double y = transform.deviceY(ball.centre());
        dashed(look);
        circle(x, y, r + 1, HALO, 4);
        circle(x, y, r + 1, look == Look.DOUBTED ? DOUBT : PLACED, chosen ? 2.4 : 1.6);
        g.setLineDashes(null);
        if (chosen) {
            stroke(x - r - 9, y, x - r - 3, y, PLACED);
            stroke(x + r + 3, y, x + r + 9, y, PLACED);
        }
    }

    private void line(ImagePoint a, ImagePoint b, Look look) {
        dashed(look);
        stroke(transform.deviceX(a), transform.deviceY(a), transform.deviceX(b), transform.deviceY(b), FLOOR);
        g.setLineDashes(null);
    }

    private void dashed(Look look) {
        g.setLineDashes(look == Look.DASHED ? new double[] {3, 3} : new double[0]);
    }

    private void stroke(double x1, double y1, double x2, double y2, Color color) {
        g.setStroke(HALO);
        g.setLineWidth(3.6);
        g.strokeLine(x1, y1, x2, y2);
        g.setStroke(color);
        g.setLineWidth(1.6);
        g.strokeLine(x1, y1, x2, y2);
    }

    private void circle(double x, double y, double r, Color color, double width) {
        g.setStroke(color);
        g.setLineWidth(width);
        g.strokeOval(x - r, y - r, 2 * r, 2 * r);
    }
}
