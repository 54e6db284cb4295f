package org.toeline.desk;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.canvas.GraphicsContext;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.desk.picture.PicturePane;
import org.toeline.desk.picture.PictureTransform;
import org.toeline.mark.View;

/** The lines that follow from the marks, drawn by the one painter of overlay and still. */
final class OverlayLines implements PicturePane.Overlay {

    private final Supplier<Optional<Assessment>> assessment;
    private Words words = Words.english();

    OverlayLines(Supplier<Optional<Assessment>> assessment) {
        this.assessment = assessment;
    }

    void words(Words changed) {
        words = changed;
    }

    @Override
    public void paint(GraphicsContext g, View view, PictureTransform transform) {
    }
}
