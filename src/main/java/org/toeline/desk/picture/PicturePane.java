package org.toeline.desk.picture;

import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import javafx.geometry.Rectangle2D;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.effect.ColorAdjust;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.Marking;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.PinnedWords;
import org.toeline.mark.View;

/**
 * The large picture. A click places the selected item, a mark is moved by dragging it, the picture by dragging it
 * anywhere else; the wheel zooms to the pointer. The lines that follow from the marks are drawn by a painter given from
 * outside, onto the same transparent canvas.
 */
public final class PicturePane extends Pane {

    /** Draws what follows from the marks. */
    public interface Overlay {

        void paint(GraphicsContext g, View view, PictureTransform transform);
    }

    private static final double MOST_LIGHT = 0.6;

    private final LessonModel model;
    private final ImageView image = new ImageView();
    /** The film while it passes, over the picture. */
    private final ImageView film = new ImageView();

    private double pictureWidth;
    private double pictureHeight;
    private final Canvas canvas = new Canvas();
    private final Loupe loupe = new Loupe();
    private Optional<ImagePoint> lookedAt = Optional.empty();
    private final Overlay overlay;
    /** How much is seen of marks that belong to another frame. */
    private static final double GHOST = 0.3;

    private final PictureHand hand;
    private final Aim aim;
    private final PinnedLayer pinned;
    private IntPredicate wheel = frames -> false;
    private PictureTransform transform = new PictureTransform(1, 0, 0);
    private boolean fitted = true;
    private Set<String> doubted = Set.of();

    /** Told of what places something, in picture pixels. */
    public interface Gestures {

        void clicked(ImagePoint at, Snap snap);

        /** A stroke while the ball is selected, or a rod's end or an upright that is to be placed. */
        void stroked(ImagePoint from, ImagePoint to, Snap snap);
    }

    public PicturePane(LessonModel model, Overlay overlay, Gestures gestures, PinnedLayer.Asks asks) {
        this.model = model;
        this.overlay = overlay;
        setId("picture");
        setMinSize(0, 0);
        setPrefSize(640, 360);
        setFocusTraversable(true);
        image.setPreserveRatio(false);
        film.setPreserveRatio(false);
        film.setMouseTransparent(true);
        film.setVisible(false);
        film.effectProperty().bind(image.effectProperty());
        getChildren().addAll(image, film, canvas, loupe);
        Rectangle clip = new Rectangle();
        clip.widthProperty().bind(widthProperty());
        clip.heightProperty().bind(heightProperty());
        setClip(clip);
        canvas.setMouseTransparent(true);
        image.setMouseTransparent(true);
        pinned = new PinnedLayer(this, model, asks);
        hand = new PictureHand(this, model, gestures);
        aim = new Aim(this, model, gestures);
        setOnMouseMoved(e -> hover(e.getX(), e.getY()));
        setOnMouseExited(e -> loupe.setVisible(false));
        setOnScroll(this::scrolled);
        widthProperty().addListener((o, a, b) -> resized());
        heightProperty().addListener((o, a, b) -> resized());
    }

    /** @param steps takes frames on or back, and answers whether there is a film to be stepped through */
    public void wheel(IntPredicate steps) {
        wheel = steps;
    }

    /** Shows a picture, in the size of the clip; marks keep their place in it. */
    public void show(@Nullable Image picture) {
        film.setVisible(false);
        // what it magnified is not there any more
        loupe.setVisible(false);
        lookedAt = Optional.empty();
        image.setImage(picture);
        if (picture == null) {
            sized(0, 0);
        } else {
            sized(picture.getWidth(), picture.getHeight());
        }
        layOut();
    }

    /** Shows a small picture of the film that passes, without marks, in the place of one in the size of the clip. */
    public void pass(Image small, int widthPx, int heightPx) {
        loupe.setVisible(false);
        film.setImage(small);
        sized(widthPx, heightPx);
        if (!film.isVisible()) {
            film.setVisible(true);
            layOut();
        }
    }

    /** Whether the film passes. */
    public boolean passes() {
        return film.isVisible();
    }

    private void sized(double widthPx, double heightPx) {
        if (widthPx != pictureWidth || heightPx != pictureHeight) {
            pictureWidth = widthPx;
            pictureHeight = heightPx;
            fit();
        }
    }

    public @Nullable Image picture() {
        return image.getImage();
    }

    double pictureWidth() {
        return pictureWidth;
    }

    double pictureHeight() {
        return pictureHeight;
    }

    PictureTransform transform() {
        return transform;
    }

    public void doubted(Set<String> names) {
        doubted = names;
    }

    /** How much brighter and richer in contrast the picture is shown than it was filmed, each from −0.6 to 0.6. */
    public record Light(double brightness, double contrast) {

        public static final Light AS_FILMED = new Light(0, 0);

        /** To tenths, so that as many steps back lead back. */
        public Light plus(double brighter, double moreContrast) {
            return new Light(within(brightness + brighter), within(contrast + moreContrast));
        }

        private static double within(double light) {
            return Math.rint(10 * Math.max(-MOST_LIGHT, Math.min(MOST_LIGHT, light))) / 10 + 0.0;
        }
    }

    /** Shows the picture in another light; to the eye alone. */
    public void light(Light light) {
        image.setEffect(
                light.equals(Light.AS_FILMED) ? null : new ColorAdjust(0, 0, light.brightness(), light.contrast()));
    }

    /** What places without a mouse. */
    public Aim aim() {
        return aim;
    }

    /** The whole picture in the pane. */
    public void fit() {
        fitted = true;
        if (pictureWidth > 0 && getWidth() > 0 && getHeight() > 0) {
            transform = PictureTransform.fit(pictureWidth, pictureHeight, getWidth(), getHeight());
        }
        layOut();
    }

    void zoom(double factor) {
        fitted = false;
        transform = transform.zoomedAt(getWidth() / 2, getHeight() / 2, factor);
        layOut();
    }

    private void resized() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        if (fitted) {
            fit();
        } else {
            layOut();
        }
    }

    private void layOut() {
        if (image.getImage() != null) {
            image.setViewport(new Rectangle2D(
                    0, 0, image.getImage().getWidth(), image.getImage().getHeight()));
            image.setFitWidth(image.getImage().getWidth() * transform.scale());
            image.setFitHeight(image.getImage().getHeight() * transform.scale());
            image.setSmooth(transform.scale() < 3);
            image.relocate(transform.offsetX(), transform.offsetY());
        }
        film.setFitWidth(pictureWidth * transform.scale());
        film.setFitHeight(pictureHeight * transform.scale());
        film.relocate(transform.offsetX(), transform.offsetY());
        repaint();
    }

    /** Draws the marks and lines anew. */
    public void repaint() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        if (image.getImage() == null || film.isVisible()) {
            return;
        }
        boolean away = model.away(model.large());
        if (!model.repeating() && !away) {
            // the lines would show where the first marks are
            overlay.paint(g, model.large(), transform);
        }
        g.setGlobalAlpha(away ? GHOST : 1);
        model.marks(model.large())
                .ifPresent(v ->
                        new MarkPainter(g, transform).paint(v, away ? Optional.empty() : model.selected(), doubted));
        pinned.paint(g);
        aim.paint(g);
        g.setGlobalAlpha(1);
    }

    /** The next click or stroke pins words. */
    public void pin(Optional<PinnedWords> elsewhere) {
        loupe.setVisible(false);
        pinned.arm(elsewhere);
    }

    /** Drops a click, stroke or move that is half done; answers whether there was one. */
    public boolean drop() {
        boolean cross = aim.drop();
        boolean words = pinned.drop();
        return hand.drop() || words || cross;
    }

    /** Whether a point lies in the picture and not beside it. */
    boolean shows(ImagePoint p) {
        Image shown = image.getImage();
        return shown != null
                && p.xPx() >= 0
                && p.xPx() <= shown.getWidth()
                && p.yPx() >= 0
                && p.yPx() <= shown.getHeight();
    }

    void pan(double dx, double dy) {
        setCursor(Cursor.CLOSED_HAND);
        loupe.setVisible(false);
        fitted = false;
        transform = transform.panned(dx, dy);
        layOut();
    }

    /** The hand is up: it points again. */
    void pointing() {
        setCursor(Cursor.CROSSHAIR);
    }

    /** A line while it is drawn, or a circle from one side to the other. */
    void stroke(Stroke as, double x1, double y1, double x2, double y2) {
        repaint();
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.setStroke(Color.color(0, 0, 0, 0.65));
        g.setLineWidth(3.6);
        as.draw(g, x1, y1, x2, y2);
        g.setStroke(Color.web("#56B4E9"));
        g.setLineWidth(1.6);
        as.draw(g, x1, y1, x2, y2);
    }

    /** What is drawn of a stroke. */
    enum Stroke {
        LINE {
            @Override
            void draw(GraphicsContext g, double x1, double y1, double x2, double y2) {
                g.strokeLine(x1, y1, x2, y2);
            }
        },
        CIRCLE {
            @Override
            void draw(GraphicsContext g, double x1, double y1, double x2, double y2) {
                double across = Math.hypot(x2 - x1, y2 - y1);
                g.strokeOval((x1 + x2 - across) / 2, (y1 + y2 - across) / 2, across, across);
            }
        };

        abstract void draw(GraphicsContext g, double x1, double y1, double x2, double y2);
    }

    /** The wheel steps through a film; with the shortcut key, or where there is no film, it zooms to the pointer. */
    private void scrolled(ScrollEvent e) {
        if (!e.isShortcutDown() && wheel.test(e.getDeltaY() < 0 ? 1 : -1)) {
            e.consume();
            return;
        }
        fitted = false;
        transform = transform.zoomedAt(e.getX(), e.getY(), Math.exp(e.getDeltaY() / 200));
        layOut();
        e.consume();
    }

    private void hover(double x, double y) {
        if (!pinned.isArmed()
                && shows(transform.picture(x, y))
                && model.selected().isPresent()
                && !model.away(model.large())) {
            setCursor(Cursor.CROSSHAIR);
            magnify(transform.picture(x, y), x);
        } else {
            loupe.setVisible(false);
        }
    }

    /** A suggestion that comes to be looked at is magnified, until the pointer asks for another place. */
    public void lookAtSuggestion() {
        Optional<ImagePoint> at = model.suggestions()
                .suggestion()
                .filter(i -> image.getImage() != null && !film.isVisible() && !model.away(model.large()))
                .filter(i -> !aim.isShown())
                .flatMap(i -> model.marks(model.large())
                        .map(v -> Marking.handles(v, i).get(0)));
        if (!at.equals(lookedAt)) {
            lookedAt = at;
            loupe.setVisible(false);
            at.ifPresent(p -> magnify(p, transform.deviceX(p)));
        }
    }

    /** The magnifier stands in the corner away from the pointer. */
    void magnify(ImagePoint at, double x) {
        loupe.show(image.getImage(), at);
        loupe.setVisible(true);
        double margin = 10;
        double left = x < getWidth() / 2 ? getWidth() - loupe.getWidth() - margin : margin;
        loupe.relocate(left, margin);
    }
}
