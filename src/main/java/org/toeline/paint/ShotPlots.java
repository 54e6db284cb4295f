package org.toeline.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.text.Bidi;
import org.toeline.language.Sentences;
import org.toeline.language.Written;

/** One painting of a {@link ShotPicture}: legend, the plot from the side, the plot from above, notes. */
final class ShotPlots {

    private static final char LEFT_TO_RIGHT = 0x200E;
    private static final double LEFT = 46;
    private static final double RIGHT = 14;
    private static final double LINE = 17;
    /** Between the two plots: the figures of the first axis and the title of the second. */
    private static final double BETWEEN = 36;

    private static final double BELOW = 20;
    /** A ring on an edge of a plot is drawn whole. */
    private static final double BEYOND = ShotTraces.MIDDLE_RADIUS + 2;

    private static final double RADIUS = 5;
    /** Of a line in the legend. */
    private static final double SAMPLE = 44;

    private final ShotPicture picture;
    private final Graphics2D g;
    private final Rectangle2D area;
    private final Font plain = Ink.plain(11.5);
    private final Font bold = Ink.bold(12);
    private final TextBlock notes;
    private final double legendHeight;
    private final ShotScale scale;

    ShotPlots(ShotPicture picture, Graphics2D g, Rectangle2D area) {
        this.picture = picture;
        this.g = g;
        this.area = area;
        this.notes = TextBlock.of(String.join(" ", picture.notes()), plain, area.getWidth() - 8);
        this.legendHeight = (oneLine() ? 1 : picture.setups().size()) * LINE + 4;
        double room = area.getHeight() - legendHeight - notes.height() - LINE - BETWEEN - BELOW - 8;
        this.scale = ShotScale.of(picture, area.getWidth() - LEFT - RIGHT, Math.max(60, room));
    }

    void paint() {
        double x0 = area.getX() + LEFT;
        double y = legend();
        double ground = y + LINE + scale.highM() * scale.pxPerM();
        title(Sentences.of(ShotPlots.class).of("shots.side"), y);
        SideView side = new SideView(x0, ground, scale);
        grid(side, 0, scale.highM());
        double top = ground + BETWEEN;
        title(Sentences.of(ShotPlots.class).of("shots.above"), top - LINE + 2);
        double line = top + 4 + scale.wideM() * scale.pxPerM();
        AboveView above = new AboveView(x0, line, scale);
        grid(above, -scale.wideM(), scale.wideM());
        Shape clip = g.getClip();
        for (int i = 0; i < picture.setups().size(); i++) {
            ShotPen pen = i == 0 ? ShotPen.FIRST : ShotPen.SECOND;
            g.clip(new Rectangle2D.Double(
                    x0 - RADIUS, y + LINE - 2, area.getMaxX() - x0, ground - y - LINE + 2 + BEYOND));
            new ShotTraces(g, pen, side).paint(picture.setups().get(i));
            g.setClip(clip);
            g.clip(new Rectangle2D.Double(
                    x0 - RADIUS, top, area.getMaxX() - x0, 2 * scale.wideM() * scale.pxPerM() + 4 + BEYOND));
            new ShotTraces(g, pen, above).paint(picture.setups().get(i));
            g.setClip(clip);
        }
        double bottom = line + scale.wideM() * scale.pxPerM() + BELOW;
        notes.paint(g, Ink.GREY, area.getX() + 4, bottom);
    }

    private double legend() {
        double y = area.getY() + LINE - 4;
        double x = area.getX() + 4;
        for (int i = 0; i < picture.setups().size(); i++) {
            ShotPen pen = i == 0 ? ShotPen.FIRST : ShotPen.SECOND;
            g.setColor(pen.color());
            g.setStroke(pen.stroke(2.4f));
            g.draw(new Line2D.Double(x, y - 4, x + SAMPLE, y - 4));
            pen.point(g, x + SAMPLE / 2, y - 4, RADIUS);
            Ink.text(g, named(i), bold, Ink.TEXT, x + SAMPLE + 8, y);
            if (oneLine()) {
                x += SAMPLE + 32 + Ink.width(named(i), bold);
            } else {
                y += LINE;
            }
        }
        return area.getY() + legendHeight;
    }

    private String named(int setup) {
        int n = picture.setups().get(setup).count();
        String name = picture.setups().get(setup).name();
        // a name that is written from the right turns round itself, not the words beside it
        String marked =
                Bidi.requiresBidi(name.toCharArray(), 0, name.length()) ? LEFT_TO_RIGHT + name + LEFT_TO_RIGHT : name;
        return Sentences.of(ShotPlots.class).of(n == 1 ? "shots.one" : "shots.many", marked, n);
    }

    private boolean oneLine() {
        double width = 0;
        for (int i = 0; i < picture.setups().size(); i++) {
            width += SAMPLE + 32 + Ink.width(named(i), bold);
        }
        return width < area.getWidth();
    }

    private void title(String text, double y) {
        Ink.text(g, text, bold, Ink.TEXT, area.getX() + 4, y + 10);
    }

    /** Lines of the grid with their figures; the ground and the target line are darker. */
    private void grid(PlotView view, double lowest, double highest) {
        double step = scale.stepM();
        String unit = " " + picture.length().id();
        double bottom = view.y(lowest);
        for (double along = 0; along <= scale.farM() + 1e-9; along += step) {
            double x = view.x(along);
            rule(x, view.y(highest), x, bottom, Ink.GRID);
            String text = figure(along) + (along + step > scale.farM() ? unit : "");
            double width = Ink.width(text, plain);
            Ink.text(g, text, plain, Ink.GREY, Math.min(x - width / 2, area.getMaxX() - width), bottom + 14);
        }
        double up = scale.upStepM();
        for (double v = Math.ceil(lowest / up - 1e-9) * up; v <= highest + 1e-9; v += up) {
            boolean zero = Math.abs(v) < 1e-9;
            rule(view.x(0), view.y(v), view.x(scale.farM()), view.y(v), zero ? Ink.GREY : Ink.GRID);
            String text = figure(Math.abs(v)) + (zero ? "" : view.side(v));
            Ink.text(g, text, plain, Ink.GREY, view.x(0) - 6 - Ink.width(text, plain), view.y(v) + 4);
        }
    }

    private void rule(double x1, double y1, double x2, double y2, Color color) {
        g.setColor(color);
        g.setStroke(new BasicStroke(1));
        g.draw(new Line2D.Double(x1, y1, x2, y2));
    }

    private String figure(double metres) {
        return Written.number("%.0f", picture.length().fromInside(metres));
    }
}
