package org.toeline.desk.picture;

import java.util.Objects;
import java.util.Optional;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.MarkOrder;
import org.toeline.desk.lesson.Marking;
import org.toeline.desk.lesson.Rods;
import org.toeline.desk.picture.PicturePane.Gestures;
import org.toeline.desk.picture.PicturePane.Stroke;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.FloorMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * What the hand does on the picture from a press to its release: a click, a stroke, a mark or the picture moved; with the other
 * button a mark chosen or the picture moved. A gesture is meant for the view and the item of its press; when another is shown or
 * selected before it is over, it comes to nothing.
 */
final class PictureHand {

    private static final double REACH = 11;
    /** On a mark's ring itself: a stroke for what is to be placed next may begin close beside another mark. */
    private static final double ON_THE_RING = 6;

    private static final double STILL = 4;
    /** No end that was found is so far wrong on the screen; from the only end that is suggested it is the rod that is drawn. */
    private static final double LONG = 60;

    private enum Doing {
        NOTHING,
        PRESSED,
        MARK,
        STROKE,
        PICTURE
    }

    private final PicturePane pane;
    private final LessonModel model;
    private final Gestures gestures;
    private Doing doing = Doing.NOTHING;
    private double pressX;
    private double pressY;
    private double clickX;
    private double clickY;
    private double lastX;
    private double lastY;
    private boolean moved;
    private View view = View.FACE_ON;
    private Optional<Item> meant = Optional.empty();
    private Optional<Item> under = Optional.empty();
    private int underHandle;
    /** Of a suggested rod or upright that is held at one end. */
    private Optional<ImagePoint> otherEnd = Optional.empty();
    /** Whether a suggested rod is held at its only end. */
    private boolean onlyEnd;

    PictureHand(PicturePane pane, LessonModel model, Gestures gestures) {
        this.pane = pane;
        this.model = model;
        this.gestures = gestures;
        pane.setOnMousePressed(this::pressed);
        pane.setOnMouseDragged(this::dragged);
        pane.setOnMouseReleased(this::released);
    }

    /** Drops what is half done; answers whether there was anything. */
    boolean drop() {
        boolean half = doing == Doing.PRESSED || doing == Doing.STROKE || doing == Doing.MARK;
        boolean moved = model.drop();
        doing = Doing.NOTHING;
        pane.repaint();
        return half || moved;
    }

    private void pressed(MouseEvent e) {
        pane.requestFocus();
        pane.aim().leave();
        if (pane.picture() == null) {
            return;
        }
        pressX = e.getX();
        pressY = e.getY();
        lastX = pressX;
        lastY = pressY;
        view = model.large();
        meant = model.selected();
        doing = e.getButton() == MouseButton.PRIMARY ? Doing.PRESSED : Doing.PICTURE;
        moved = false;
        under = Optional.empty();
        if (!model.away(view)) {
            model.marks(view).ifPresent(this::findUnder);
        }
    }

    private void findUnder(ViewMarks marks) {
        double nearest = meant.filter(i -> isStroked(i) && isToBePlaced(i)).isPresent() ? ON_THE_RING : REACH;
        for (Item item : Marking.marked(marks)) {
            int handle = 0;
            for (ImagePoint p : Marking.handles(marks, item)) {
                double d = fromPress(p);
                if (d < nearest) {
                    nearest = d;
                    under = Optional.of(item);
                    underHandle = handle;
                }
                handle++;
            }
        }
        meant.filter(i -> MarkOrder.suggested(marks, i) && reaches(marks, i)).ifPresent(i -> under = meant);
    }

    /** Where several lie close together the press is for the suggestion that is looked at. */
    private boolean reaches(ViewMarks marks, Item item) {
        return !isStroked(item) && fromPress(Marking.handles(marks, item).get(0)) < REACH;
    }

    private double fromPress(ImagePoint p) {
        return Math.hypot(pane.transform().deviceX(p) - pressX, pane.transform().deviceY(p) - pressY);
    }

    private void dragged(MouseEvent e) {
        if ((doing == Doing.PRESSED || doing == Doing.STROKE) && !isStillMeant()) {
            doing = Doing.NOTHING;
            pane.repaint();
        }
        moved |= Math.hypot(e.getX() - pressX, e.getY() - pressY) > STILL;
        if (doing == Doing.PRESSED && moved) {
            begin();
        }
        if (doing == Doing.MARK) {
            ImagePoint at = at(e);
            model.drag(at);
            pane.magnify(at, e.getX());
        } else if (doing == Doing.STROKE) {
            pane.magnify(at(e), e.getX());
            pane.stroke(
                    meant.filter(i -> i instanceof Item.OfBall).isPresent() ? Stroke.CIRCLE : Stroke.LINE,
                    pressX,
                    pressY,
                    e.getX(),
                    e.getY());
        } else if (doing == Doing.PICTURE) {
            pane.pan(e.getX() - lastX, e.getY() - lastY);
        }
        lastX = e.getX();
        lastY = e.getY();
    }

    private void begin() {
        if (under.isPresent()) {
            doing = Doing.MARK;
            otherEnd = model.marks(view)
                    .filter(v -> MarkOrder.suggested(v, under.get()))
                    .flatMap(v -> otherEnd(v, under.get()));
            onlyEnd = under.get() instanceof Item.OfFloor && otherEnd.isEmpty() && isSuggested(under.get());
            model.select(under.get(), underHandle);
            model.grab();
        } else {
            // away from the marked frame there is nothing to place, and the picture is moved
            doing = meant.filter(this::isStroked).isPresent() && !model.away(view) ? Doing.STROKE : Doing.PICTURE;
        }
    }

    private Optional<ImagePoint> otherEnd(ViewMarks marks, Item item) {
        if (item instanceof Item.OfVertical) {
            return Optional.of(Marking.handles(marks, item).get(1 - underHandle));
        }
        return item instanceof Item.OfFloor f
                ? Rods.otherEnd(model.sheet().floor(), f.pointId())
                        .flatMap(marks::floorMark)
                        .map(FloorMark::at)
                : Optional.empty();
    }

    /** Whether a stroke is meant for an item and does not pan: for the ball, a rod's end or an upright that is to be placed. */
    private boolean isStroked(Item item) {
        return item instanceof Item.OfBall
                || (item instanceof Item.OfFloor || item instanceof Item.OfVertical) && isToBePlaced(item);
    }

    private boolean isToBePlaced(Item item) {
        return model.marks(view).filter(v -> MarkOrder.isOpen(v, item)).isPresent();
    }

    private boolean isSuggested(Item item) {
        return model.marks(view).filter(v -> MarkOrder.suggested(v, item)).isPresent();
    }

    private boolean isStillMeant() {
        return view == model.large() && meant.equals(model.selected());
    }

    private ImagePoint at(MouseEvent e) {
        return pane.transform().picture(e.getX(), e.getY());
    }

    private void released(MouseEvent e) {
        Doing was = doing;
        doing = Doing.NOTHING;
        pane.pointing();
        if (was == Doing.MARK && isAlongItsRod(e)) {
            model.drop();
            gestures.stroked(pane.transform().picture(pressX, pressY), at(e), snap(e));
        } else if (was == Doing.MARK) {
            model.release();
        } else if (was == Doing.PRESSED && isStillMeant()) {
            clicked(at(e), e);
        } else if (was == Doing.STROKE && isStillMeant()) {
            stroked(pane.transform().picture(pressX, pressY), at(e), snap(e));
        } else if (was == Doing.PICTURE && !moved && view == model.large()) {
            under.ifPresent(item -> model.select(item, underHandle));
        }
        if (was == Doing.STROKE) {
            pane.repaint();
        }
    }

    /**
     * Whoever draws from one suggested end of a rod or an upright to its other end, or far away where no other end is suggested,
     * draws it, and moves no end.
     */
    private boolean isAlongItsRod(MouseEvent e) {
        return onlyEnd && Math.hypot(e.getX() - pressX, e.getY() - pressY) > LONG || isAtItsOtherEnd(e);
    }

    private boolean isAtItsOtherEnd(MouseEvent e) {
        return otherEnd.filter(end -> Math.hypot(
                                pane.transform().deviceX(end) - e.getX(),
                                pane.transform().deviceY(end) - e.getY())
                        < REACH)
                .isPresent();
    }

    /**
     * What is to be placed next goes where the click is, also close beside another mark or on its own suggestion; else the mark
     * there is chosen.
     */
    private void clicked(ImagePoint at, MouseEvent e) {
        boolean free = meant.filter(i -> under.equals(meant) || !isSuggested(i))
                .filter(this::isToBePlaced)
                .isPresent();
        if (under.isPresent() && !free) {
            model.select(under.get(), underHandle);
        } else if (!isSecondHalf(e) && pane.shows(at)) {
            clickX = e.getX();
            clickY = e.getY();
            gestures.clicked(at, snap(e));
        }
    }

    /** The second half of a double click is no wish for the next mark in the same place. */
    private boolean isSecondHalf(MouseEvent e) {
        return e.getClickCount() > 1 && Math.hypot(e.getX() - clickX, e.getY() - clickY) <= STILL;
    }

    private static Snap snap(MouseEvent e) {
        return e.isShortcutDown() ? Snap.BY_HAND : Snap.TO_PICTURE;
    }

    /** What runs out of the picture ends at its edge. */
    private void stroked(ImagePoint from, ImagePoint to, Snap snap) {
        if (!pane.shows(from)) {
            return;
        }
        double inside = 1;
        inside = Math.min(
                inside,
                share(
                        from.xPx(),
                        to.xPx(),
                        Objects.requireNonNull(pane.picture()).getWidth()));
        inside = Math.min(
                inside,
                share(
                        from.yPx(),
                        to.yPx(),
                        Objects.requireNonNull(pane.picture()).getHeight()));
        gestures.stroked(from, from.plus(inside * (to.xPx() - from.xPx()), inside * (to.yPx() - from.yPx())), snap);
    }

    /** How much of the way from one place to another is between 0 and an end. */
    private static double share(double from, double to, double end) {
        return to < 0 ? from / (from - to) : to > end ? (end - from) / (to - from) : 1;
    }
}
