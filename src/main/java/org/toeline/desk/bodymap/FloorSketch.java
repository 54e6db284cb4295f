package org.toeline.desk.bodymap;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.toeline.advice.Words;
import org.toeline.desk.lesson.Rods;
import org.toeline.desk.text.TypedNumber;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorReference;

/** A layout from above, to scale, the target to the right and the player at the top, with its size along the target line and across it. */
final class FloorSketch extends Canvas {

    private static final double WIDTH = 84;
    private static final double HEIGHT = 38;
    private static final double ROOM = 3;
    private static final double TEXT = 11;
    private static final double DOT = 2;

    private final double leastT;
    private final double leastH;
    private final double pxPerM;

    FloorSketch(FloorLayout floor, Words words) {
        super(WIDTH, HEIGHT);
        List<FloorReference> points = floor.points();
        leastT = points.stream().mapToDouble(FloorReference::t).min().orElse(0);
        leastH = points.stream().mapToDouble(FloorReference::h).min().orElse(0);
        double along = points.stream().mapToDouble(FloorReference::t).max().orElse(0) - leastT;
        double across = points.stream().mapToDouble(FloorReference::h).max().orElse(0) - leastH;
        double drawnHeight = HEIGHT - TEXT - 2 * ROOM;
        pxPerM = Math.min(
                along > 0 ? (WIDTH - 2 * ROOM) / along : Double.MAX_VALUE,
                across > 0 ? drawnHeight / across : Double.MAX_VALUE);
        GraphicsContext g = getGraphicsContext2D();
        g.setStroke(BodyMap.ink());
        g.setFill(BodyMap.ink());
        g.setLineWidth(2);
        for (FloorReference p : points) {
            g.fillOval(x(p) - DOT, y(p) - DOT, 2 * DOT, 2 * DOT);
        }
        for (Rods.Rod rod : Rods.of(floor)) {
            FloorReference one = floor.point(rod.one()).orElseThrow();
            FloorReference other = floor.point(rod.other()).orElseThrow();
            g.strokeLine(x(one), y(one), x(other), y(other));
        }
        g.setFont(Font.font(TEXT - 1));
        g.setTextAlign(TextAlignment.LEFT);
        g.setTextBaseline(VPos.BOTTOM);
        String size = number(along, words) + (across > 0 ? " × " + number(across, words) : "");
        g.fillText(size + "\u00a0" + words.lengthUnit().id(), ROOM, HEIGHT);
    }

    private static String number(double lengthM, Words words) {
        return TypedNumber.shown(words.lengthUnit().fromMetres(lengthM), "0");
    }

    private double x(FloorReference p) {
        return ROOM + (p.t() - leastT) * pxPerM;
    }

    private double y(FloorReference p) {
        return HEIGHT - TEXT - ROOM - (p.h() - leastH) * pxPerM;
    }
}
