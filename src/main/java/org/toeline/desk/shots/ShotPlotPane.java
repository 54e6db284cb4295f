package org.toeline.desk.shots;

import java.awt.geom.Rectangle2D;
import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;
import org.jfree.fx.FXGraphics2D;
import org.toeline.flight.FigureUnit;
import org.toeline.handout.ShotPicture;

/** The picture of the shots, as large as there is room. */
final class ShotPlotPane extends Region {

    private static final double MARGIN = 8;

    private final Canvas canvas = new Canvas();
    private ShotPicture picture = new ShotPicture(List.of(), FigureUnit.METRE, List.of());

    ShotPlotPane() {
        setId("shots-picture");
        getStyleClass().add("paper");
        getChildren().add(canvas);
        setMinSize(200, 120);
    }

    ShotPicture picture() {
        return picture;
    }

    /** @param read the picture in words, for who cannot see it */
    void show(ShotPicture changed, String read) {
        picture = changed;
        canvas.setAccessibleText(read);
        paint();
    }

    @Override
    protected void layoutChildren() {
        if (canvas.getWidth() != getWidth() || canvas.getHeight() != getHeight()) {
            canvas.setWidth(getWidth());
            canvas.setHeight(getHeight());
            paint();
        }
    }

    private void paint() {
        canvas.getGraphicsContext2D().clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        if (canvas.getWidth() > 2 * MARGIN && canvas.getHeight() > 2 * MARGIN) {
            picture.paint(new FXGraphics2D(canvas.getGraphicsContext2D()), new Rectangle2D.Double(MARGIN, MARGIN,
                    canvas.getWidth() - 2 * MARGIN, canvas.getHeight() - 2 * MARGIN));
        }
    }
}
