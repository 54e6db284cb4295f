package org.toeline.desk.picture;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import org.jfree.fx.FXGraphics2D;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.PinnedWords;
import org.toeline.paint.PinnedNote;

/**
 * Words pinned to the large picture: placed by a click on what they are about, or by a stroke from it to where they shall stand; moved
 * by dragging them, opened by a click on them. Away from the marked frame they are shown and no more.
 */
public final class PinnedLayer {

    /** Asks for the words. */
    public interface Asks {

        /**
         * For the words of a place.
         *
         * @param text what stands there so far; empty for new ones
         */
        void write(ImagePoint at, ImagePoint stand, Optional<PinnedWords> before);
    }

    private static final double TYPE = 15;
    private static final double STILL = 4;
    /** Where words stand that were given no place: above what they are about, on the side with more room, of the picture's height. */
    private static final double ASIDE = 0.16;

    private final PicturePane pane;
    private final LessonModel model;
    private final Asks asks;
    private boolean armed;
    private Optional<PinnedWords> elsewhere = Optional.empty();
    private Optional<PinnedWords> held = Optional.empty();
    private Optional<PinnedWords> preview = Optional.empty();
    private Optional<ImagePoint> from = Optional.empty();
    private double pressX;
    private double pressY;

    PinnedLayer(PicturePane pane, LessonModel model, Asks asks) {
        this.pane = pane;
        this.model = model;
        this.asks = asks;
        pane.addEventFilter(MouseEvent.MOUSE_PRESSED, this::pressed);
        pane.addEventFilter(MouseEvent.MOUSE_DRAGGED, this::dragged);
        pane.addEventFilter(MouseEvent.MOUSE_RELEASED, this::released);
    }

    /** @param words that shall be about something else from now on; empty for new ones */
    void arm(Optional<PinnedWords> words) {
        armed = true;
        elsewhere = words;
    }

    boolean isArmed() {
        return armed;
    }

    /** Nothing is to be pinned any more; answers whether something was. */
    boolean drop() {
        boolean was = armed || held.isPresent();
        armed = false;
        held = Optional.empty();
        from = Optional.empty();
        preview = Optional.empty();
        return was;
    }

    private void pressed(MouseEvent e) {
        if (e.getButton() != MouseButton.PRIMARY || pane.picture() == null || !model.isPinnable()) {
            return;
        }
        pressX = e.getX();
        pressY = e.getY();
        ImagePoint at = pane.transform().picture(pressX, pressY);
        if (armed) {
            from = Optional.of(at).filter(pane::shows);
            e.consume();
            return;
        }
        held = under(pressX, pressY);
        if (held.isPresent()) {
            pane.requestFocus();
            e.consume();
        }
    }

    /** The last one painted lies on top. */
    private Optional<PinnedWords> under(double x, double y) {
        return model.lesson().words(model.large()).stream()
                .filter(w -> note(w).box().contains(x, y))
                .reduce((below, above) -> above);
    }

    private void dragged(MouseEvent e) {
        if (from.isEmpty() && held.isEmpty()) {
            return;
        }
        e.consume();
        if (isMoved(e)) {
            preview = from.map(f -> drawn(f, e)).or(() -> held.map(h -> moved(h, e)));
            pane.repaint();
        }
    }

    private PinnedWords drawn(ImagePoint about, MouseEvent e) {
        String text = elsewhere.map(PinnedWords::text).orElse("…");
        return inPicture(
                new PinnedWords(model.large(), text, about, pane.transform().picture(e.getX(), e.getY()), false));
    }

    private PinnedWords moved(PinnedWords words, MouseEvent e) {
        double scale = pane.transform().scale();
        return inPicture(words.standing(words.stand().plus((e.getX() - pressX) / scale, (e.getY() - pressY) / scale)));
    }

    private PinnedWords inPicture(PinnedWords words) {
        return words.within(pane.pictureWidth(), pane.pictureHeight());
    }

    private boolean isMoved(MouseEvent e) {
        return preview.isPresent() || Math.hypot(e.getX() - pressX, e.getY() - pressY) > STILL;
    }

    private void released(MouseEvent e) {
        Optional<ImagePoint> about = from;
        Optional<PinnedWords> words = held;
        Optional<PinnedWords> place = preview;
        Optional<PinnedWords> before = elsewhere;
        if (about.isEmpty() && words.isEmpty()) {
            return;
        }
        e.consume();
        drop();
        pane.pointing();
        about.ifPresent(at -> asks.write(
                at,
                place.map(PinnedWords::stand)
                        .or(() -> before.map(PinnedWords::stand))
                        .orElseGet(() -> aside(at)),
                before));
        words.ifPresent(w -> place.ifPresentOrElse(
                p -> model.pin(Optional.of(w), Optional.of(p)), () -> asks.write(w.at(), w.stand(), Optional.of(w))));
        pane.repaint();
    }

    private ImagePoint aside(ImagePoint at) {
        double off = ASIDE * pane.pictureHeight();
        double x = at.xPx() < pane.pictureWidth() / 2 ? at.xPx() - off : at.xPx() + off;
        return inPicture(new PinnedWords(model.large(), "…", at, new ImagePoint(x, at.yPx() - off), false))
                .stand();
    }

    private PinnedNote note(PinnedWords words) {
        PictureTransform t = pane.transform();
        return PinnedNote.of(
                words,
                new AffineTransform(t.scale(), 0, 0, t.scale(), t.offsetX(), t.offsetY()),
                new Rectangle2D.Double(0, 0, pane.getWidth(), pane.getHeight()),
                TYPE);
    }

    void paint(GraphicsContext g) {
        FXGraphics2D on = new FXGraphics2D(g);
        List<PinnedWords> words = model.lesson().words(model.large());
        words.stream()
                .filter(w -> preview.isEmpty() || !held.equals(Optional.of(w)))
                .forEach(w -> note(w).paint(on));
        preview.ifPresent(p -> note(p).paint(on));
    }
}
