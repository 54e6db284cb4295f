package org.toeline.desk.shots;

import java.awt.geom.Rectangle2D;
import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.text.TextAlignment;
import org.toeline.desk.look.Look;
import org.toeline.desk.text.Texts;
import org.toeline.desk.work.Background;
import org.toeline.flight.FigureUnit;
import org.toeline.paint.ShotPicture;

/**
 * The picture of the shots, as large as there is room. Of many curves that takes as long as the rest of a turn, so it is painted
 * on another thread, onto a canvas that stands in no window yet, and then put in the place of the one before.
 */
final class ShotPlotPane extends Region {

    private static final double MARGIN = 8;
    /** Of two plots with their words beside usual text. */
    private static final double LEAST_HEIGHT = 300;

    private static final double HINT_WIDTH = 420;
    private static final double PERCENT = 100;

    private final Background.Lane painting;
    private Canvas canvas = new Canvas();
    private final Label hint = new Label();
    private ShotPicture picture = new ShotPicture(List.of(), FigureUnit.METRE, List.of(), "");
    private Asked asked = new Asked(picture, 0, 0, Look.now());

    /** @param background has the thread that paints */
    ShotPlotPane(Background background) {
        painting = background.lane();
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
        hint.setText(Texts.of("shots.picture.empty"));
        hint.setVisible(changed.setups().stream().allMatch(s -> s.shots().isEmpty()));
        paint();
    }

    /** @param nothingYet whether there are shots that nothing is drawn of yet */
    void reckoning(boolean nothingYet) {
        if (nothingYet) {
            hint.setText(Texts.of("shots.differences.reckoning"));
        }
    }

    @Override
    protected void layoutChildren() {
        if (asked.width() != getWidth() || asked.height() != getHeight()) {
            paint();
        }
        double width = Math.min(HINT_WIDTH, getWidth() - 4 * MARGIN);
        double height = hint.prefHeight(width);
        hint.resizeRelocate((getWidth() - width) / 2, (getHeight() - height) / 2, width, height);
    }

    private void paint() {
        Asked now = new Asked(picture, getWidth(), getHeight(), Look.now());
        asked = now;
        if (now.width > 2 * MARGIN && now.height > 2 * MARGIN) {
            painting.run(now::painted, drawn -> {
                drawn.setVisible(!hint.isVisible());
                getChildren().set(getChildren().indexOf(canvas), drawn);
                canvas = drawn;
            });
        }
    }

    /** A picture of a size; painted on any thread. */
    private record Asked(ShotPicture picture, double width, double height, Look look) {

        Canvas painted() {
            Canvas canvas = new Canvas(width, height);
            canvas.setAccessibleText(picture.described());
            double scale = Math.max(1, Math.min(look.textPercent() / PERCENT, height / LEAST_HEIGHT));
            picture.paint(
                    look.ink(canvas, scale),
                    new Rectangle2D.Double(MARGIN, MARGIN, width / scale - 2 * MARGIN, height / scale - 2 * MARGIN));
            return canvas;
        }
    }
}
