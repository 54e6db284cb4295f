package org.toeline.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.toeline.advice.Verdict;

/**
 * Colours, type and verdict marks. Colours are those of Okabe and Ito (2008, from memory); a verdict has its own shape
 * too, so that nothing is told by colour alone. Text is filled outlines: the same on screen, in a PNG and on paper.
 */
public final class Ink {

    public static final Color BLUE = new Color(0x0072B2);
    public static final Color VERMILION = new Color(0xD55E00);
    /** Bluish green and reddish purple of the same palette, the purple darker so that lines of it stand out 3 : 1 on paper. */
    public static final Color GREEN = new Color(0x009E73);

    public static final Color PURPLE = new Color(0xC16A9B);
    public static final Color GREY = new Color(0x595959);
    public static final Color TEXT = new Color(0x1A1A1A);
    public static final Color PAPER = new Color(0xFAF9F6);
    public static final Color RULE = new Color(0xC9C6BF);
    /** A recommended range. */
    public static final Color BAND = new Color(0xBFD9EA);
    /** Lines of a plot to read figures off. */
    public static final Color GRID = new Color(0xE3E0D9);
    /** Behind the lesson that is looked at. */
    public static final Color CHOSEN = new Color(0xF3E9C6);

    static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private static final Font PLAIN = font("DejaVuSans.ttf");
    private static final Font BOLD = font("DejaVuSans-Bold.ttf");

    private static final int MOST_LAID_OUT = 2000;
    private static final Map<Wanted, Drawn> LAID_OUT = new LinkedHashMap<>(256, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Wanted, Drawn> eldest) {
            return size() > MOST_LAID_OUT;
        }
    };

    private Ink() {}

    public static Font plain(double size) {
        return PLAIN.deriveFont((float) size);
    }

    public static Font bold(double size) {
        return BOLD.deriveFont((float) size);
    }

    public static InputStream fontFile(String name) {
        InputStream in = Ink.class.getResourceAsStream(name);
        if (in == null) {
            throw new IllegalStateException("the program lacks its own " + name);
        }
        return in;
    }

    private static Font font(String name) {
        try (InputStream in = fontFile(name)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(name + " is damaged", e);
        }
    }

    static double width(String text, Font font) {
        return text.isEmpty() ? 0 : drawn(text, font).advance;
    }

    /** The font, or a smaller one with which the text is no wider. */
    public static Font fitting(String text, Font font, double width) {
        double wide = width(text, font);
        return wide <= width ? font : font.deriveFont((float) (font.getSize2D() * width / wide));
    }

    /** Text from its left end on the baseline. */
    static void text(Graphics2D g, String text, Font font, Color color, double x, double y) {
        if (!text.isEmpty()) {
            g.setColor(color);
            g.fill(outline(text, font, x, y));
        }
    }

    /** A line of dark text from the left edge, its baseline so far down. */
    public static void line(Graphics2D g, String text, Font font, double baseline) {
        text(g, text, font, TEXT, 0, baseline);
    }

    static Shape outline(String text, Font font, double x, double y) {
        return AffineTransform.getTranslateInstance(x, y).createTransformedShape(drawn(text, font).outline);
    }

    /** Text laid out once: the same names and units are drawn again and again while a mark is dragged. */
    private record Drawn(Shape outline, double advance) {}

    private record Wanted(String text, String font, float size) {}

    private static Drawn drawn(String text, Font font) {
        Wanted wanted = new Wanted(text, font.getFontName(), font.getSize2D());
        synchronized (LAID_OUT) {
            return LAID_OUT.computeIfAbsent(wanted, w -> {
                TextLayout layout = new TextLayout(Script.of(text, font).getIterator(), CONTEXT);
                return new Drawn(layout.getOutline(new AffineTransform()), layout.getAdvance());
            });
        }
    }

    /** Text within a dark halo, readable over any picture. */
    public static void textOverPicture(Graphics2D g, String text, Font font, Color color, double x, double y) {
        Shape shape = outline(text, font, x, y);
        g.setColor(halo(color));
        g.setStroke(new BasicStroke(font.getSize2D() / 4, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
        g.setColor(color);
        g.fill(shape);
    }

    /** What stands out around a colour: white around dark ones, near black around light ones. */
    static Color halo(Color color) {
        double light = 0.299 * color.getRed() + 0.587 * color.getGreen() + 0.114 * color.getBlue();
        return light < 150 ? Color.WHITE : new Color(0x111111);
    }

    static Color color(Optional<Verdict> verdict) {
        return verdict.map(v -> switch (v) {
                    case IN_RANGE -> BLUE;
                    case OUT_LOW, OUT_HIGH -> VERMILION;
                    default -> GREY;
                })
                .orElse(GREY);
    }

    /** The verdict's mark: filled dot, filled diamond, hollow dot, dashed ring; a short bar where nothing is judged. */
    static void verdictMark(Graphics2D g, Optional<Verdict> verdict, double x, double y, double radius) {
        g.setColor(color(verdict));
        Shape ring = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
        float line = (float) (radius * 0.38);
        if (verdict.filter(Verdict::isJudged).isEmpty()) {
            g.fill(new java.awt.geom.Rectangle2D.Double(x - line / 2, y - radius, line, 2 * radius));
        } else if (verdict.get() == Verdict.IN_RANGE) {
            g.fill(ring);
        } else if (verdict.get().isOut()) {
            g.fill(diamond(x, y, radius * 1.25));
        } else {
            boolean dashed = verdict.get() == Verdict.CANNOT_TELL;
            Color ink = g.getColor();
            g.setColor(Color.WHITE);
            g.fill(ring);
            g.setColor(ink);
            g.setStroke(
                    dashed
                            ? new BasicStroke(
                                    line,
                                    BasicStroke.CAP_BUTT,
                                    BasicStroke.JOIN_ROUND,
                                    1,
                                    new float[] {(float) (radius * 0.6), (float) (radius * 0.45)},
                                    0)
                            : new BasicStroke(line));
            g.draw(ring);
        }
    }

    private static Shape diamond(double x, double y, double r) {
        Path2D path = new Path2D.Double();
        path.moveTo(x, y - r);
        path.lineTo(x + r, y);
        path.lineTo(x, y + r);
        path.lineTo(x - r, y);
        path.closePath();
        return path;
    }
}
