package org.toeline.desk.shots;

import java.awt.geom.Rectangle2D;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.text.TextAlignment;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.flight.FigureUnit;
import org.toeline.paint.ShotPicture;

/** The picture of the shots, as large as there is room. */
final class ShotPlotPane extends Region {

    private static final double MARGIN = 8;
    /** Of two plots with their words beside usual text. */
    private static final double LEAST_HEIGHT = 300;

    private static final double HINT_WIDTH = 420;

    private final Canvas canvas = new Canvas();
    private final Label hint = new Label();
    private ShotPicture picture = new ShotPicture(List.of(), FigureUnit.METRE, List.of(), "");

    private boolean waiting;

    ShotPlotPane() {
        setId("shots-picture");
        getStyleClass().add("paper");
        hint.setText(Texts.of("shots.picture.empty"));
        hint.setId("shots-picture-empty");
        hint.setWrapText(true);
        hint.setTextAlignment(TextAlignment.CENTER);
        hint.setMouseTransparent(true);
        hint.getStyleClass().add("first-follows");
        getChildren().addAll(canvas, hint);
        setMinSize(200, 120);
    }

    ShotPicture picture() {
        return picture;
    }

    void show(ShotPicture changed) {
        picture = changed;
        canvas.setAccessibleText(changed.described());
        hint.setVisible(changed.setups().stream().allMatch(s -> s.shots().isEmpty()));
        canvas.setVisible(!hint.isVisible());
        if (!waiting) {
            waiting = true;
            Platform.runLater(this::paint);
        }
    }

    @Override
    protected void layoutChildren() {
        if (canvas.getWidth() != getWidth() || canvas.getHeight() != getHeight()) {
            canvas.setWidth(getWidth());
            canvas.setHeight(getHeight());
            paint();
        }
        double width = Math.min(HINT_WIDTH, getWidth() - 4 * MARGIN);
        double height = hint.prefHeight(width);
        hint.resizeRelocate((getWidth() - width) / 2, (getHeight() - height) / 2, width, height);
    }

    /** At the interface's next turn, once for whatever came meanwhile: many curves take as long as the rest of a turn. */
    private void paint() {
        waiting = false;
        if (canvas.getWidth() > 2 * MARGIN && canvas.getHeight() > 2 * MARGIN) {
            double scale = Math.max(1, Math.min(Look.scale(), canvas.getHeight() / LEAST_HEIGHT));
            picture.paint(
                    Look.now().ink(canvas, scale),
                    new Rectangle2D.Double(
                            MARGIN,
                            MARGIN,
                            canvas.getWidth() / scale - 2 * MARGIN,
                            canvas.getHeight() / scale - 2 * MARGIN));
        }
    }
}
