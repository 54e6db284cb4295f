package org.toeline.paint;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Where writing may stand in a frame: never over other writing, and over the player only where nothing else is free. */
final class LabelRoom {

    private static final double CLEAR = 8;
    /** What writing keeps from the edge of the frame. */
    private static final double EDGE = 22;

    private static final double A_POINT = 400;
    private static final int RINGS = 26;
    private static final double RING = 22;
    private static final int AROUND = 16;

    private final Rectangle2D frame;
    private final List<Point2D> avoided;
    private final List<Rectangle2D> taken;

    LabelRoom(Rectangle2D frame, List<Point2D> avoided) {
        this(frame, avoided, new ArrayList<>());
    }

    private LabelRoom(Rectangle2D frame, List<Point2D> avoided, List<Rectangle2D> taken) {
        this.frame = frame;
        this.avoided = List.copyOf(avoided);
        this.taken = taken;
    }

    /** The same room, for writing that keeps clear of more. */
    LabelRoom clearOf(List<Point2D> more) {
        List<Point2D> all = new ArrayList<>(avoided);
        all.addAll(more);
        return new LabelRoom(frame, all, taken);
    }

    /** Something stands there already. */
    void take(Rectangle2D box) {
        taken.add(box);
    }

    /** The free place nearest to a point for a box of that size, which is taken. */
    Rectangle2D place(double width, double height, Point2D near) {
        Rectangle2D best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int ring = 0; ring <= RINGS; ring++) {
            for (int i = 0; i < (ring == 0 ? 1 : AROUND); i++) {
                double angle = 2 * Math.PI * i / AROUND;
                Rectangle2D tried = within(
                        near.getX() + ring * RING * Math.cos(angle) - width / 2,
                        near.getY() + ring * RING * Math.sin(angle) - height / 2,
                        width,
                        height);
                double cost = cost(tried, near);
                if (cost < least) {
                    least = cost;
                    best = tried;
                }
            }
        }
        Rectangle2D place = best == null ? within(near.getX(), near.getY(), width, height) : best;
        taken.add(place);
        return place;
    }

    private double cost(Rectangle2D tried, Point2D near) {
        Rectangle2D clear = new Rectangle2D.Double(
                tried.getX() - CLEAR,
                tried.getY() - CLEAR,
                tried.getWidth() + 2 * CLEAR,
                tried.getHeight() + 2 * CLEAR);
        return taken.stream().anyMatch(clear::intersects)
                ? Double.POSITIVE_INFINITY
                : near.distance(tried.getCenterX(), tried.getCenterY())
                        + A_POINT * avoided.stream().filter(clear::contains).count();
    }

    private Rectangle2D within(double x, double y, double width, double height) {
        return new Rectangle2D.Double(
                Math.max(frame.getMinX() + EDGE, Math.min(frame.getMaxX() - EDGE - width, x)),
                Math.max(frame.getMinY() + EDGE, Math.min(frame.getMaxY() - EDGE - height, y)),
                width,
                height);
    }
}
