package org.toeline.desk.sheet;

import java.awt.geom.AffineTransform;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javafx.scene.canvas.GraphicsContext;
import org.jfree.fx.FXGraphics2D;
import org.toeline.advice.Assessment;
import org.toeline.advice.Words;
import org.toeline.desk.picture.PicturePane;
import org.toeline.desk.picture.PictureTransform;
import org.toeline.mark.View;
import org.toeline.paint.OverlayPainter;
import org.toeline.paint.OverlayShapes.Kind;

/** The lines that follow from the marks, drawn by the one painter of overlay and still. */
final class OverlayLines implements PicturePane.Overlay {

    private static final Set<Kind> SHOWN =
            EnumSet.of(Kind.SHOULDERS, Kind.TOES, Kind.PLUMB, Kind.GAP, Kind.TARGET, Kind.CROWN);

    private final Supplier<Optional<Assessment>> assessment;
    private Words words = Words.usual();
    private boolean hidden;

    OverlayLines(Supplier<Optional<Assessment>> assessment) {
        this.assessment = assessment;
    }

    void words(Words changed) {
        words = changed;
    }

    void toggle() {
        hidden = !hidden;
    }

    @Override
    public void paint(GraphicsContext g, View view, PictureTransform transform) {
        if (hidden) {
            return;
        }
        assessment
                .get()
                .ifPresent(a -> new OverlayPainter(words, 3, 15)
                        .paint(
                                new FXGraphics2D(g),
                                a,
                                view,
                                new AffineTransform(
                                        transform.scale(),
                                        0,
                                        0,
                                        transform.scale(),
                                        transform.offsetX(),
                                        transform.offsetY()),
                                SHOWN));
    }
}
