package org.toeline.desk.look;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import org.jfree.fx.FXGraphics2D;

/**
 * How large the text is and what paper it stands on. Chosen before the window is made, as the language is; JavaFX thread.
 *
 * @param textPercent of the usual size, one of {@link #SIZES}
 */
public record Look(int textPercent, Paper paper) {

    /** The sizes of text there are to choose from, in percent of the usual one. */
    public static final List<Integer> SIZES = List.of(100, 115, 125, 150, 175);

    public static final Look USUAL = new Look(100, Paper.LIGHT);

    private static final double USUAL_TEXT_PX = 14;

    private static Look now = USUAL;

    /** The ground that words stand on. */
    public enum Paper {
        LIGHT,
        DARK
    }

    public Look {
        if (!SIZES.contains(textPercent)) {
            throw new IllegalArgumentException(Integer.toString(textPercent));
        }
    }

    public static Look now() {
        return now;
    }

    /** From now on, for what is made from now on. */
    public static void choose(Look chosen) {
        now = chosen;
    }

    /** So many pixels beside text of the usual size, and as many more as the text is larger. */
    public static double px(double usualPx) {
        return Math.rint(usualPx * now.textPercent / 100);
    }

    /** How many times as large as usual text is. */
    public static double scale() {
        return now.textPercent / 100.0;
    }

    /** Dresses a window; what opens from it is dressed like it. */
    public void dress(Scene scene) {
        scene.setUserAgentStylesheet(
                (paper == Paper.DARK ? new PrimerDark() : new PrimerLight()).getUserAgentStylesheet());
        scene.getStylesheets().setAll(sheet("desk.css"));
        if (paper == Paper.DARK) {
            scene.getStylesheets().add(sheet("dark.css"));
        }
        scene.getStylesheets().add("data:text/css,.root{-fx-font-size:" + USUAL_TEXT_PX * textPercent / 100 + "px;}");
    }

    private static String sheet(String name) {
        return Look.class.getResource("/org/toeline/desk/" + name).toExternalForm();
    }

    /** Wipes a drawing and paints what paper is painted with in the colours of this paper, so many times as large. */
    public FXGraphics2D ink(Canvas drawing, double scale) {
        drawing.getGraphicsContext2D().setTransform(scale, 0, 0, scale, 0, 0);
        return ink(drawing, 0, drawing.getHeight() / scale);
    }

    /** Wipes a strip of a drawing, across all of it, and paints there as before. */
    public FXGraphics2D ink(Canvas drawing, double y, double height) {
        GraphicsContext g = drawing.getGraphicsContext2D();
        g.clearRect(0, y, drawing.getWidth() / g.getTransform().getMxx(), height);
        return paper == Paper.DARK ? new DarkInk(g) : new FXGraphics2D(g);
    }
}
