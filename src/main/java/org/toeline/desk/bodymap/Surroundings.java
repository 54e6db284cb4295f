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
    private static final double END = 19;
    private static final ImagePoint POST_TOP = new ImagePoint(216, 40);
    private static final ImagePoint POST_FOOT = new ImagePoint(216, 236);

    private Surroundings() {}

    static void draw(Pen pen, FloorLayout floor, Figure shown, Optional<Item> selected) {
        boolean post = selected.filter(i -> i instanceof Item.OfVertical).isPresent();
        pen.lines(post ? ANNOUNCED : PALE, post ? 5 : 3, POST_TOP, POST_FOOT);
        for (Rods.Rod rod : Rods.of(floor)) {
            FloorReference one = floor.point(rod.one()).orElseThrow();
            FloorReference other = floor.point(rod.other()).orElseThrow();
            boolean chosen = isChosen(one, selected) || isChosen(other, selected);
            pen.lines(chosen ? ANNOUNCED : PALE, chosen ? 4 : 2, shown.floor(one), shown.floor(other));
        }
    }

    /** The end that is announced, over everything else. */
    static void drawEnd(Pen pen, FloorLayout floor, Figure shown, Optional<Item> selected) {
        floor.points().stream().filter(p -> isChosen(p, selected)).forEach(p -> {
            pen.oval(Color.web("#F0E442"), shown.floor(p), END, END);
            pen.rim(ANNOUNCED, 3, shown.floor(p), END, END);
        });
    }

    private static boolean isChosen(FloorReference point, Optional<Item> selected) {
        return selected.equals(Optional.of(new Item.OfFloor(point.id())));
    }
}
