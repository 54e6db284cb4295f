package org.toeline.desk.bodymap;

import java.util.HashMap;
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
import org.toeline.desk.lesson.Item;
import org.toeline.desk.lesson.LessonModel;
import org.toeline.desk.lesson.MarkOrder;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.ViewMarks;

/**
 * A drawn figure at address with a ring for every landmark the large view shows: empty to do, filled when placed, dashed
 * when suggested, small and grey when it cannot be seen, orange when in doubt. A click picks the landmark.
 */
public final class BodyMap extends Pane {

    private static final Color INK = Color.web("#3b3f46");
    private static final Color BODY = Color.web("#d9d5cc");
    private static final Color PLACED = Color.web("#0072B2");
    private static final Color UNSEEN = Color.web("#8a8780");
    private static final Color DOUBT = Color.web("#D55E00");

    private final LessonModel model;
    private final java.util.function.Function<Landmark, String> names;
    private final Canvas figure = new Canvas(BodyFigure.WIDTH, BodyFigure.HEIGHT);
    private final Map<Landmark, Circle> rings = new HashMap<>();

    /** @param names what a landmark is called in a coach's words */
    public BodyMap(LessonModel model, java.util.function.Function<Landmark, String> names) {
        this.model = model;
        this.names = names;
        setId("body-map");
        setMinSize(BodyFigure.WIDTH, BodyFigure.HEIGHT);
        setMaxSize(BodyFigure.WIDTH, BodyFigure.HEIGHT);
        getChildren().add(figure);
        for (Landmark landmark : Landmark.values()) {
            Circle ring = new Circle(7);
            ring.setId("ring-" + landmark.id());
            ring.setAccessibleText(names.apply(landmark));
            ring.setCursor(Cursor.HAND);
            Tooltip.install(ring, new Tooltip(names.apply(landmark)));
            ring.setOnMouseClicked(e -> model.select(new Item.OfLandmark(landmark)));
            rings.put(landmark, ring);
            getChildren().add(ring);
        }
    }

    /** Brings the rings up to date. */
    public void update(Set<String> doubted) {
        draw();
        Set<Landmark> shown = Set.copyOf(MarkOrder.landmarks(model.large()));
        Optional<ViewMarks> view = model.marks(model.large());
        for (Landmark landmark : Landmark.values()) {
            Circle ring = rings.get(landmark);
            ring.setVisible(shown.contains(landmark));
            ImagePoint p = BodyFigure.at(landmark);
            ring.setCenterX(x(p));
            ring.setCenterY(p.yPx());
            Optional<Mark> mark = view.flatMap(v -> v.mark(landmark));
            boolean doubt = doubted.contains(landmark.id());
            boolean chosen = model.selected().equals(Optional.of(new Item.OfLandmark(landmark)));
            boolean unseen = mark.isEmpty() && model.unseen(model.large(), new Item.OfLandmark(landmark));
            ring.setRadius(chosen ? 9.5 : unseen ? 4 : 6.5);
            ring.setStroke(doubt ? DOUBT : mark.isPresent() ? PLACED : unseen ? UNSEEN : INK);
            ring.setStrokeWidth(chosen ? 3.2 : 1.8);
            boolean suggested = mark.map(m -> m.origin() == Mark.Origin.SUGGESTED).orElse(false);
            ring.getStrokeDashArray().setAll(suggested ? java.util.List.of(3.0, 3.0) : java.util.List.of());
            ring.setFill(doubt ? Color.web("#D55E00", 0.55) : mark.isPresent() && !suggested ? PLACED
                    : unseen && !chosen ? UNSEEN : chosen ? Color.web("#F0E442") : Color.web("#ffffff", 0.85));
            ring.setAccessibleText(names.apply(landmark) + (doubt ? ", in doubt" : mark.isPresent() ? ", placed"
                    : unseen ? ", not to be seen" : ""));
        }
    }

    private double x(ImagePoint p) {
        return model.sheet().handedness() == Handedness.LEFT ? BodyFigure.WIDTH - p.xPx() : p.xPx();
    }

    private void draw() {
        GraphicsContext g = figure.getGraphicsContext2D();
        g.clearRect(0, 0, BodyFigure.WIDTH, BodyFigure.HEIGHT);
        g.setLineCap(StrokeLineCap.ROUND);
        g.setLineJoin(StrokeLineJoin.ROUND);
        limb(g, 26, Landmark.LEAD_HIP, Landmark.LEAD_KNEE);
        limb(g, 26, Landmark.TRAIL_HIP, Landmark.TRAIL_KNEE);
        limb(g, 19, Landmark.LEAD_KNEE, Landmark.LEAD_ANKLE, Landmark.LEAD_TOE);
        limb(g, 19, Landmark.TRAIL_KNEE, Landmark.TRAIL_ANKLE, Landmark.TRAIL_TOE);
        trunk(g);
        limb(g, 16, Landmark.TRAIL_SHOULDER, Landmark.TRAIL_ELBOW, Landmark.TRAIL_WRIST);
        limb(g, 16, Landmark.LEAD_SHOULDER, Landmark.LEAD_ELBOW, Landmark.LEAD_WRIST);
        g.setFill(BODY);
        ImagePoint head = BodyFigure.at(Landmark.HEAD_CENTRE);
        g.fillOval(x(head) - 20, head.yPx() - 24, 40, 48);
        g.setStroke(INK);
        g.setLineWidth(3);
        ImagePoint grip = BodyFigure.at(Landmark.GRIP_END);
        ImagePoint low = BodyFigure.at(Landmark.CLUB_HEAD);
        g.strokeLine(x(grip), grip.yPx(), x(low), low.yPx());
        g.setFill(Color.WHITE);
        ImagePoint ball = new ImagePoint(166, 320);
        g.fillOval(x(ball) + 3, ball.yPx() - 5, 10, 10);
        g.setLineWidth(1);
        g.strokeOval(x(ball) + 3, ball.yPx() - 5, 10, 10);
    }

    private void trunk(GraphicsContext g) {
        Landmark[] corners = {Landmark.LEAD_SHOULDER, Landmark.LEAD_HIP, Landmark.TRAIL_HIP, Landmark.TRAIL_SHOULDER};
        double[] xs = new double[4];
        double[] ys = new double[4];
        for (int i = 0; i < 4; i++) {
            xs[i] = x(BodyFigure.at(corners[i]));
            ys[i] = BodyFigure.at(corners[i]).yPx();
        }
        g.setFill(BODY);
        g.fillPolygon(xs, ys, 4);
        g.setStroke(BODY);
        g.setLineWidth(22);
        g.strokePolygon(xs, ys, 4);
    }

    private void limb(GraphicsContext g, double width, Landmark... along) {
        g.setStroke(BODY);
        g.setLineWidth(width);
        for (int i = 1; i < along.length; i++) {
            ImagePoint a = BodyFigure.at(along[i - 1]);
            ImagePoint b = BodyFigure.at(along[i]);
            g.strokeLine(x(a), a.yPx(), x(b), b.yPx());
        }
    }
}
