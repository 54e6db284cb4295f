package org.toeline.desk.bodymap;

import java.util.Optional;
import javafx.scene.paint.Color;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.Rods;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.FloorLayout;
import org.toeline.mark.FloorReference;

/** What is around the player in the drawing: the rods on the floor and something upright; what is announced stands out. */
final class Surroundings {

    private static final Color PALE = Color.web("#c3beb3");
    private static final Color ANNOUNCED = Color.web("#0072B2");
    /** Scale of the floor in the drawing, which is seen from the front and a little from above. */
    private static final double PX_PER_M_ALONG = 150;

    private static final double PX_PER_M_DEEP = 45;
    private static final double MARGIN = 10;
    private static final double END = 19;
    private static final ImagePoint POST_TOP = new ImagePoint(216, 40);
    private static final ImagePoint POST_FOOT = new ImagePoint(216, 236);

    private Surroundings() {}

    static void draw(Pen pen, FloorLayout floor, ImagePoint ball, Optional<Item> selected) {
        boolean post = selected.filter(i -> i instanceof Item.OfVertical).isPresent();
        pen.lines(post ? ANNOUNCED : PALE, post ? 5 : 3, POST_TOP, POST_FOOT);
        for (Rods.Rod rod : Rods.of(floor)) {
            FloorReference one = floor.point(rod.one()).orElseThrow();
            FloorReference other = floor.point(rod.other()).orElseThrow();
            boolean chosen = isChosen(one, selected) || isChosen(other, selected);
            pen.lines(chosen ? ANNOUNCED : PALE, chosen ? 4 : 2, at(one, ball), at(other, ball));
        }
    }

    /** The end that is announced, over everything else. */
    static void drawEnd(Pen pen, FloorLayout floor, ImagePoint ball, Optional<Item> selected) {
        floor.points().stream().filter(p -> isChosen(p, selected)).forEach(p -> {
            pen.oval(Color.web("#F0E442"), at(p, ball), END, END);
            pen.rim(ANNOUNCED, 3, at(p, ball), END, END);
        });
    }

    private static boolean isChosen(FloorReference point, Optional<Item> selected) {
        return selected.equals(Optional.of(new Item.OfFloor(point.id())));
    }

    /** Towards the target is towards the lead side, towards the player is up; what lies far off is drawn at the edge. */
    private static ImagePoint at(FloorReference point, ImagePoint ball) {
        return new ImagePoint(
                Math.max(MARGIN, Math.min(BodyFigure.WIDTH - MARGIN, ball.xPx() + PX_PER_M_ALONG * point.t())),
                Math.max(MARGIN, Math.min(BodyFigure.HEIGHT - MARGIN, ball.yPx() - PX_PER_M_DEEP * point.h())));
    }
}
