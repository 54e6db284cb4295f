package org.toeline.desk.look;

import java.awt.Color;
import java.awt.Paint;
import java.util.Map;
import javafx.scene.canvas.GraphicsContext;
import org.jfree.fx.FXGraphics2D;
import org.toeline.paint.Ink;

/**
 * Paints on dark paper what was made for light: each ink has a lighter one of its hue, and white paper is dark. The colours of
 * verdicts and setups stay told apart as in the palette they come from.
 */
final class DarkInk extends FXGraphics2D {

    /** As {@code dark.css} has them. */
    static final Color PAPER = new Color(0x191B1E);

    private static final Map<Integer, Color> DARK = Map.ofEntries(
            Map.entry(rgb(Ink.TEXT), new Color(0xECE9E2)),
            Map.entry(rgb(Ink.GREY), new Color(0xB5B1A9)),
            Map.entry(rgb(Ink.PAPER), PAPER),
            Map.entry(rgb(Color.WHITE), new Color(0x23262A)),
            Map.entry(rgb(Ink.BLUE), new Color(0x5CB3F0)),
            Map.entry(rgb(Ink.VERMILION), new Color(0xFF8A3D)),
            Map.entry(rgb(Ink.GREEN), new Color(0x2FC79B)),
            Map.entry(rgb(Ink.PURPLE), new Color(0xDD93BD)),
            Map.entry(rgb(Ink.RULE), new Color(0x62676D)),
            Map.entry(rgb(Ink.BAND), new Color(0x2F5166)),
            Map.entry(rgb(Ink.GRID), new Color(0x34383C)),
            Map.entry(rgb(Ink.CHOSEN), new Color(0x4A4326)));

    DarkInk(GraphicsContext g) {
        super(g);
    }

    private static int rgb(Color color) {
        return color.getRGB() & 0xFFFFFF;
    }

    /** The colour on dark paper; one that is none of paper's inks stays. */
    static Color dark(Color color) {
        Color dark = DARK.getOrDefault(rgb(color), color);
        return new Color(dark.getRed(), dark.getGreen(), dark.getBlue(), color.getAlpha());
    }

    @Override
    public void setColor(Color color) {
        super.setColor(dark(color));
    }

    @Override
    public void setPaint(Paint paint) {
        super.setPaint(paint instanceof Color color ? dark(color) : paint);
    }
}
