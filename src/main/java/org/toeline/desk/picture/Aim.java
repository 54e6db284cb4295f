package org.toeline.desk.picture;

import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonListener;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.MarkOrder;
import org.toeline.desk.lesson.Marking;
import org.toeline.desk.lesson.Rods;
import org.toeline.desk.picture.PicturePane.Gestures;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * A cross that keys move over the picture: what is to be placed goes where it stands, as it goes where a mouse clicks, and along the
 * way between two places where a mouse draws. It is seen, and has the arrow keys, while something of the large view is to be placed;
 * what is suggested meanwhile of the thing it was moved for does not take it away.
 */
public final class Aim implements LessonListener {

    /** How often it is moved from the picture's lower edge to the upper. */
    private static final double STEPS = 72;

    private static final double FAR = 10;
    private static final double ARM_PX = 15;
    private static final double GAP_PX = 4;

    private final PicturePane pane;
    private final LessonModel model;
    private final Gestures gestures;
    private Optional<ImagePoint> at = Optional.empty();
    private Optional<Begun> begun = Optional.empty();
    private Optional<Aimed> moved = Optional.empty();

    /** How far a key moves it. */
    public enum Step {
        PIXEL,
        NEAR,
        FAR
    }

    /** A stroke that has one end. */
    private record Begun(View view, Item item, ImagePoint from) {}

    /** What it was moved for since that was selected. */
    private record Aimed(View view, Item item) {}

    Aim(PicturePane pane, LessonModel model, Gestures gestures) {
        this.pane = pane;
        this.model = model;
        this.gestures = gestures;
        model.listen(this);
    }

    @Override
    public void changed() {
        moved = moved.filter(a -> selected().equals(Optional.of(a)));
    }

    private Optional<Aimed> selected() {
        return model.selected().map(item -> new Aimed(model.large(), item));
    }

    /** Whether the large view shows a picture in which something is to be placed. */
    public boolean isOfUse() {
        return pane.picture() != null
                && !pane.passes()
                && !model.away(model.large())
                && toBePlaced().isPresent();
    }

    /** Whether it is there, and the arrow keys are for it. */
    public boolean isShown() {
        return at.isPresent() && isOfUse();
    }

    /** Brings it, where it was last. */
    public void begin() {
        at = Optional.of(within(at.orElse(new ImagePoint(pane.pictureWidth() / 2, pane.pictureHeight() / 2))));
        look();
    }

    /** @param right of so many steps; {@code down} likewise */
    public void move(Step step, int right, int down) {
        double px = step == Step.PIXEL ? 1 : Math.max(1, Math.rint(pane.pictureHeight() / STEPS));
        double far = step == Step.FAR ? FAR : 1;
        moved = toBePlaced().flatMap(item -> selected());
        at = at.map(p -> within(p.plus(px * far * right, px * far * down)));
        look();
    }

    /** As a click; for a rod or an upright the one end of a stroke, or the other. */
    public void press() {
        if (begun().isPresent() || toBePlaced().filter(this::isDrawn).isPresent()) {
            draw();
        } else {
            at.ifPresent(p -> gestures.clicked(p, Snap.TO_PICTURE));
        }
    }

    /** Begins a stroke, or ends it. */
    public void draw() {
        Optional<Begun> before = begun();
        begun = Optional.empty();
        if (before.isPresent()) {
            at.ifPresent(to -> gestures.stroked(before.get().from(), to, Snap.TO_PICTURE));
        } else {
            begun = at.flatMap(p -> toBePlaced().map(item -> new Begun(model.large(), item, p)));
        }
        pane.repaint();
    }

    /** Drops a stroke that has one end, else puts the cross away; answers whether there was any. */
    boolean drop() {
        boolean stroke = begun().isPresent();
        boolean was = isShown();
        begun = Optional.empty();
        if (!stroke) {
            at = Optional.empty();
            moved = Optional.empty();
        }
        return was;
    }

    /** A hand is on the picture. */
    void leave() {
        at = Optional.empty();
        begun = Optional.empty();
        moved = Optional.empty();
    }

    void paint(GraphicsContext g) {
        if (!isShown()) {
            return;
        }
        double x = pane.transform().deviceX(at.orElseThrow());
        double y = pane.transform().deviceY(at.orElseThrow());
        begun().ifPresent(b -> {
            double fromX = pane.transform().deviceX(b.from());
            double fromY = pane.transform().deviceY(b.from());
            if (b.item() instanceof Item.OfBall) {
                lines(g, () -> PicturePane.Stroke.CIRCLE.draw(g, fromX, fromY, x, y));
            } else {
                lines(g, () -> g.strokeLine(fromX, fromY, x, y));
            }
        });
        lines(g, () -> {
            g.strokeLine(x - ARM_PX, y, x - GAP_PX, y);
            g.strokeLine(x + GAP_PX, y, x + ARM_PX, y);
            g.strokeLine(x, y - ARM_PX, x, y - GAP_PX);
            g.strokeLine(x, y + GAP_PX, x, y + ARM_PX);
        });
    }

    /** Seen on any ground. */
    private static void lines(GraphicsContext g, Runnable drawn) {
        g.setStroke(Color.color(0, 0, 0, 0.75));
        g.setLineWidth(4);
        drawn.run();
        g.setStroke(Color.web("#F0E442"));
        g.setLineWidth(1.8);
        drawn.run();
    }

    private void look() {
        ImagePoint p = at.orElseThrow();
        pane.repaint();
        pane.magnify(p, pane.transform().deviceX(p));
    }

    /** A stroke is meant for the view and the item it was begun for. */
    private Optional<Begun> begun() {
        return begun.filter(b -> b.view() == model.large() && toBePlaced().equals(Optional.of(b.item())));
    }

    private Optional<Item> toBePlaced() {
        Optional<ViewMarks> view = model.marks(model.large());
        return model.selected()
                .filter(i -> !(i instanceof Item.OfGround))
                .filter(i -> view.filter(
                                v -> Marking.handles(v, i).isEmpty() || moved.isPresent() && MarkOrder.suggested(v, i))
                        .isPresent());
    }

    private boolean isDrawn(Item item) {
        return item instanceof Item.OfVertical
                || item instanceof Item.OfFloor f
                        && model.marks(model.large())
                                .filter(v -> Rods.otherEnd(model.sheet().floor(), v, f.pointId())
                                        .filter(other -> v.floorMark(other).isEmpty())
                                        .isPresent())
                                .isPresent();
    }

    private ImagePoint within(ImagePoint p) {
        return new ImagePoint(
                Math.max(0, Math.min(pane.pictureWidth(), p.xPx())),
                Math.max(0, Math.min(pane.pictureHeight(), p.yPx())));
    }
}
