package org.toeline.desk.bodymap;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import org.toeline.advice.Words;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.MarkOrder;
import org.toeline.desk.lesson.Marking;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * A drawing of what the large view shows, a figure at address or the tee, with a ring for the ball and every landmark: empty to
 * do, filled when placed, dashed when suggested, small and grey when it cannot be seen, orange when in doubt. A click picks one;
 * what is announced stands out, rods and uprights too.
 */
public final class BodyMap extends Pane {

    static final Color INK = Color.web("#3b3f46");
    static final Color BODY = Color.web("#d9d5cc");
    private static final Color PLACED = Color.web("#0072B2");
    private static final Color UNSEEN = Color.web("#8a8780");
    private static final Color DOUBT = Color.web("#D55E00");
    private static final Color CHOSEN = Color.web("#F0E442");
    private static final Color PALE_INK = Color.web("#cfcac0");
    private static final Color DARK_BODY = Color.web("#5b5f66");
    private static final Color FAR_BODY = Color.web("#c2bdb2");
    private static final Color DARK_FAR_BODY = Color.web("#484c52");
    private static final Figure TEE = new TeeFigure();
    private static final Figure DOWN_THE_LINE = new DownTheLineFigure();

    private final LessonModel model;
    private final Words words;
    private final Canvas drawing = new Canvas();
    private double scale = 1;
    private final Map<Item, Circle> rings = new LinkedHashMap<>();

    public BodyMap(LessonModel model, Words words) {
        this.model = model;
        this.words = words;
        setId("body-map");
        sized(1);
        getChildren().add(drawing);
        for (Landmark landmark : Landmark.values()) {
            ring(new Item.OfLandmark(landmark));
        }
        ring(Item.BALL);
    }

    /** As a share of its usual size; drawn when it is next brought up to date. */
    void sized(double share) {
        scale = share;
        setMinSize(share * BodyFigure.WIDTH, share * BodyFigure.HEIGHT);
        setMaxSize(share * BodyFigure.WIDTH, share * BodyFigure.HEIGHT);
        drawing.setWidth(share * BodyFigure.WIDTH);
        drawing.setHeight(share * BodyFigure.HEIGHT);
    }

    private void ring(Item item) {
        Circle ring = new Circle(7);
        ring.setId("ring-" + item.name());
        ring.setCursor(Cursor.HAND);
        Tooltip.install(ring, new Tooltip(ItemNames.of(item, words)));
        ring.setOnMouseClicked(e -> model.select(item));
        rings.put(item, ring);
        getChildren().add(ring);
    }

    /** Brings the drawing and its rings up to date. */
    public void update(Set<String> doubted) {
        View large = model.large();
        Figure shown = of(large);
        Pen pen = new Pen(
                drawing.getGraphicsContext2D(),
                model.sheet().handedness() == Handedness.LEFT ? Pen.Way.MIRRORED : Pen.Way.AS_DRAWN);
        draw(shown, pen);
        Optional<ViewMarks> view = model.marks(large);
        Set<Landmark> landmarks = Set.copyOf(MarkOrder.landmarks(large));
        rings.forEach((item, ring) -> {
            Optional<Landmark> landmark =
                    item instanceof Item.OfLandmark l ? Optional.of(l.landmark()) : Optional.empty();
            ring.setVisible(landmark.isEmpty() || landmarks.contains(landmark.get()));
            place(ring, pen, landmark.map(shown::at).orElse(shown.ball()));
            Known known = doubted.contains(item.name())
                    ? Known.DOUBTED
                    : view.filter(v -> MarkOrder.suggested(v, item)).isPresent()
                            ? Known.SUGGESTED
                            : view.filter(v -> !Marking.handles(v, item).isEmpty())
                                            .isPresent()
                                    ? Known.PLACED
                                    : model.unseen(large, item) ? Known.UNSEEN : Known.NOTHING;
            paint(ring, known, model.selected().equals(Optional.of(item)));
            ring.setAccessibleText(
                    ItemNames.of(item, words) + Texts.of("ring." + known.name().toLowerCase(java.util.Locale.ROOT)));
        });
    }

    static Figure of(View view) {
        return switch (view) {
            case TEE -> TEE;
            case DOWN_THE_LINE -> DOWN_THE_LINE;
            case FACE_ON -> BodyFigure.BODY;
        };
    }

    /** What is drawn thin and stands on the paper itself. */
    static Color ink() {
        return on(PALE_INK, INK);
    }

    /** The player, on the paper. */
    static Color body() {
        return on(DARK_BODY, BODY);
    }

    /** The player's side that is away from the camera. */
    static Color farBody() {
        return on(DARK_FAR_BODY, FAR_BODY);
    }

    private static Color on(Color darkPaper, Color lightPaper) {
        return Look.now().paper() == Look.Paper.DARK ? darkPaper : lightPaper;
    }

    private void draw(Figure shown, Pen pen) {
        GraphicsContext g = pen.g();
        g.setTransform(scale, 0, 0, scale, 0, 0);
        g.clearRect(0, 0, BodyFigure.WIDTH, BodyFigure.HEIGHT);
        g.setLineCap(StrokeLineCap.ROUND);
        g.setLineJoin(StrokeLineJoin.ROUND);
        boolean wholePlayer = model.large() != View.TEE;
        if (wholePlayer) {
            Surroundings.draw(pen, model.sheet().floor(), shown, model.selected());
        }
        shown.draw(pen);
        if (wholePlayer) {
            Surroundings.drawEnd(pen, model.sheet().floor(), shown, model.selected());
        }
        model.selected()
                .filter(Item.OfLandmark.class::isInstance)
                .map(i -> ((Item.OfLandmark) i).landmark())
                .ifPresent(l -> BonyPoint.draw(pen, l));
    }

    /** A ring's look, by what is known of the thing. */
    private enum Known {
        NOTHING,
        UNSEEN,
        SUGGESTED,
        PLACED,
        DOUBTED
    }

    private static void paint(Circle ring, Known known, boolean chosen) {
        ring.setRadius(chosen ? 9.5 : known == Known.UNSEEN ? 4 : 6.5);
        ring.setStroke(
                known == Known.DOUBTED
                        ? DOUBT
                        : known == Known.UNSEEN ? UNSEEN : known == Known.NOTHING ? INK : PLACED);
        ring.setStrokeWidth(chosen ? 3.2 : 1.8);
        ring.getStrokeDashArray().setAll(known == Known.SUGGESTED ? java.util.List.of(3.0, 3.0) : java.util.List.of());
        ring.setFill(
                known == Known.DOUBTED
                        ? Color.web("#D55E00", 0.55)
                        : known == Known.PLACED
                                ? PLACED
                                : chosen ? CHOSEN : known == Known.UNSEEN ? UNSEEN : Color.web("#ffffff", 0.85));
    }

    private void place(Circle ring, Pen pen, ImagePoint p) {
        ring.setCenterX(scale * pen.x(p));
        ring.setCenterY(scale * p.yPx());
    }
}
