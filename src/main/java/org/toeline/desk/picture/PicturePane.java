package org.toeline.desk.picture;

import java.util.Optional;
import java.util.Set;
import javafx.geometry.Rectangle2D;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.effect.ColorAdjust;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import org.jspecify.annotations.Nullable;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.Marking;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

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

    private static final double REACH = 11;
    private static final double STILL = 4;

    private static final double MOST_LIGHT = 0.6;

    private final LessonModel model;
    private final ImageView image = new ImageView();
    private final Canvas canvas = new Canvas();
    private final Loupe loupe = new Loupe();
    private final Overlay overlay;
    private final Gestures gestures;
    private PictureTransform transform = new PictureTransform(1, 0, 0);
    private boolean fitted = true;
    private Set<String> doubted = Set.of();
    private double pressX;
    private double pressY;
    private double lastX;
    private double lastY;
    private Drag drag = Drag.NONE;
    private Optional<Item> under = Optional.empty();
    private int underHandle;

    private enum Drag { NONE, PRESSED, MARK, LINE, PICTURE }

    /** Told of what places something, in picture pixels. */
    public interface Gestures {

        void clicked(ImagePoint at);

        /** A stroke while a rod's end or an upright is to be placed. */
        void lined(ImagePoint from, ImagePoint to);
    }

    public PicturePane(LessonModel model, Overlay overlay, Gestures gestures) {
        this.model = model;
        this.overlay = overlay;
        this.gestures = gestures;
        setId("picture");
        setMinSize(0, 0);
        setPrefSize(640, 360);
        setAccessibleText("picture");
        setFocusTraversable(true);
        image.setPreserveRatio(false);
        getChildren().addAll(image, canvas, loupe);
        Rectangle clip = new Rectangle();
        clip.widthProperty().bind(widthProperty());
        clip.heightProperty().bind(heightProperty());
        setClip(clip);
        canvas.setMouseTransparent(true);
        image.setMouseTransparent(true);
        setOnMousePressed(this::pressed);
        setOnMouseDragged(this::dragged);
        setOnMouseReleased(this::released);
        setOnMouseMoved(e -> hover(e.getX(), e.getY()));
        setOnMouseExited(e -> loupe.setVisible(false));
        setOnScroll(this::scrolled);
        widthProperty().addListener((o, a, b) -> resized());
        heightProperty().addListener((o, a, b) -> resized());
    }

    /** Shows a picture; its size is that of the clip, marks keep their place in it. */
    public void show(@Nullable Image picture) {
        boolean other = image.getImage() == null || picture == null
                || image.getImage().getWidth() != picture.getWidth()
                || image.getImage().getHeight() != picture.getHeight();
        image.setImage(picture);
        if (other) {
            fit();
        }
        layOut();
    }

    public @Nullable Image picture() {
        return image.getImage();
    }

    public PictureTransform transform() {
        return transform;
    }

    public void doubted(Set<String> names) {
        doubted = names;
    }

    /** Adds to the picture's brightness and contrast, each from −0.6 to 0.6; to the eye alone. */
    public void light(double brightness, double contrast) {
        ColorAdjust light = image.getEffect() instanceof ColorAdjust before ? before : new ColorAdjust();
        light.setBrightness(Math.max(-MOST_LIGHT, Math.min(MOST_LIGHT, light.getBrightness() + brightness)));
        light.setContrast(Math.max(-MOST_LIGHT, Math.min(MOST_LIGHT, light.getContrast() + contrast)));
        boolean plain = Math.abs(light.getBrightness()) < 1e-9 && Math.abs(light.getContrast()) < 1e-9;
        image.setEffect(plain ? null : light);
    }

    /** The whole picture in the pane. */
    public void fit() {
        fitted = true;
        if (image.getImage() != null && getWidth() > 0 && getHeight() > 0) {
            transform = PictureTransform.fit(image.getImage().getWidth(), image.getImage().getHeight(), getWidth(),
                    getHeight());
        }
        layOut();
    }

    public void zoom(double factor) {
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
            image.setViewport(new Rectangle2D(0, 0, image.getImage().getWidth(), image.getImage().getHeight()));
            image.setFitWidth(image.getImage().getWidth() * transform.scale());
            image.setFitHeight(image.getImage().getHeight() * transform.scale());
            image.setSmooth(transform.scale() < 3);
            image.relocate(transform.offsetX(), transform.offsetY());
        }
        repaint();
    }

    /** Draws the marks and lines anew. */
    public void repaint() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        if (image.getImage() == null) {
            return;
        }
        overlay.paint(g, model.large(), transform);
        model.marks(model.large()).ifPresent(v -> new MarkPainter(g, transform).paint(v, model.selected(), doubted));
    }

    private void pressed(MouseEvent e) {
        requestFocus();
        if (image.getImage() == null) {
            return;
        }
        pressX = e.getX();
        pressY = e.getY();
        lastX = pressX;
        lastY = pressY;
        if (e.getButton() != MouseButton.PRIMARY) {
            drag = Drag.PICTURE;
            return;
        }
        drag = Drag.PRESSED;
        under = Optional.empty();
        model.marks(model.large()).ifPresent(v -> grab(v, e.getX(), e.getY()));
    }

    private void grab(ViewMarks view, double x, double y) {
        double nearest = REACH;
        Optional<Item> found = Optional.empty();
        int handle = 0;
        for (Item item : Marking.marked(view)) {
            int n = 0;
            for (ImagePoint p : Marking.handles(view, item)) {
                double d = Math.hypot(transform.deviceX(p) - x, transform.deviceY(p) - y);
                if (d < nearest) {
                    nearest = d;
                    found = Optional.of(item);
                    handle = n;
                }
                n++;
            }
        }
        under = found;
        underHandle = handle;
    }

    /** What is to be placed next goes where the click is, also close beside another mark; else that mark is chosen. */
    private void clickedOn(Item item, ImagePoint at) {
        boolean placing = model.selected().filter(i -> model.marks(model.large())
                .filter(v -> Marking.handles(v, i).isEmpty()).isPresent()).isPresent();
        if (placing) {
            gestures.clicked(at);
        } else {
            model.select(item, underHandle);
        }
    }

    private void dragged(MouseEvent e) {
        boolean begun = drag == Drag.PRESSED && Math.hypot(e.getX() - pressX, e.getY() - pressY) > STILL;
        if (begun && under.isPresent()) {
            drag = Drag.MARK;
            model.select(under.get(), underHandle);
            model.grab();
        }
        if (drag == Drag.MARK) {
            ImagePoint at = transform.picture(e.getX(), e.getY());
            model.drag(at);
            magnify(at, e.getX());
        } else if (drag == Drag.LINE || begun && linePlaces()) {
            drag = Drag.LINE;
            magnify(transform.picture(e.getX(), e.getY()), e.getX());
            repaint();
            stroke(e.getX(), e.getY());
        } else if (drag == Drag.PICTURE || begun) {
            drag = Drag.PICTURE;
            setCursor(Cursor.CLOSED_HAND);
            loupe.setVisible(false);
            fitted = false;
            transform = transform.panned(e.getX() - lastX, e.getY() - lastY);
            layOut();
        }
        lastX = e.getX();
        lastY = e.getY();
    }

    /** Whether a rod's end or an upright is to be placed, so that a stroke is meant for it and does not pan. */
    private boolean linePlaces() {
        return model.selected().filter(i -> i instanceof Item.OfFloor || i instanceof Item.OfVertical).isPresent()
                && model.marks(model.large()).filter(v -> Marking.handles(v, model.selected().get()).isEmpty()).isPresent();
    }

    private void stroke(double x, double y) {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.setStroke(Color.color(0, 0, 0, 0.65));
        g.setLineWidth(3.6);
        g.strokeLine(pressX, pressY, x, y);
        g.setStroke(Color.web("#56B4E9"));
        g.setLineWidth(1.6);
        g.strokeLine(pressX, pressY, x, y);
    }

    private void released(MouseEvent e) {
        Drag was = drag;
        drag = Drag.NONE;
        setCursor(Cursor.CROSSHAIR);
        if (was == Drag.MARK) {
            model.release();
        } else if (was == Drag.PRESSED) {
            ImagePoint at = transform.picture(e.getX(), e.getY());
            under.ifPresentOrElse(item -> clickedOn(item, at), () -> gestures.clicked(at));
        } else if (was == Drag.LINE) {
            gestures.lined(transform.picture(pressX, pressY), transform.picture(e.getX(), e.getY()));
        }
    }

    private void scrolled(ScrollEvent e) {
        fitted = false;
        transform = transform.zoomedAt(e.getX(), e.getY(), Math.exp(e.getDeltaY() / 200));
        layOut();
        e.consume();
    }

    private void hover(double x, double y) {
        if (image.getImage() != null && model.selected().isPresent()) {
            setCursor(Cursor.CROSSHAIR);
            magnify(transform.picture(x, y), x);
        } else {
            loupe.setVisible(false);
        }
    }

    /** The magnifier stands in the corner away from the pointer. */
    private void magnify(ImagePoint at, double x) {
        loupe.show(image.getImage(), at);
        loupe.setVisible(true);
        double margin = 10;
        double left = x < getWidth() / 2 ? getWidth() - loupe.getWidth() - margin : margin;
        loupe.relocate(left, margin);
    }
}
