package org.toeline.handout;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.nio.file.Path;
import java.util.List;
import org.toeline.language.Sentences;
import org.toeline.paint.Drawing;
import org.toeline.paint.Ink;
import org.toeline.paint.TextBlock;

/**
 * A page of the guide for whoever films: how the phones stand, or how the rods lie and where one's work is kept.
 *
 * @param number   1 or 2
 * @param lessons  where the lessons are
 * @param settings where settings and documents are
 */
public record GuidePage(int number, Path lessons, Path settings) implements Drawing {

    private static final double MARGIN = 42;
    private static final double GAP = 11;

    @Override
    public double width() {
        return Paper.A4.widthPt();
    }

    @Override
    public double height() {
        return Paper.A4.heightPt();
    }

    @Override
    public String title() {
        return words().of("guide.title." + number);
    }

    @Override
    public String described() {
        return words().of("guide.described." + number);
    }

    private static Sentences words() {
        return Sentences.of(Guide.class);
    }

    @Override
    public void paint(Graphics2D g) {
        g.setColor(Color.WHITE);
        g.fill(new java.awt.geom.Rectangle2D.Double(0, 0, width(), height()));
        double y = block(g, title(), Ink.bold(19), 34);
        if (number == 1) {
            y = points(g, List.of("stand", "high"), y);
            y = picture(g, 210, y, pictures -> pictures.phones());
            y = points(g, List.of("whole", "lens", "still"), y);
            y = picture(g, 188, y, pictures -> pictures.frames());
            points(g, List.of("two", "care"), y);
        } else {
            y = points(g, List.of("rods", "ends"), y);
            y = picture(g, 240, y, pictures -> pictures.rods());
            y = points(g, List.of("other", "away"), y);
            y = block(g, words().of("guide.kept.title"), Ink.bold(14), y + 8);
            y = block(g, words().of("guide.kept.where", lessons, settings), Ink.plain(10.5), y + 3);
            points(g, List.of("backup", "back", "again"), y + GAP);
        }
    }

    private double points(Graphics2D g, List<String> points, double top) {
        double y = top;
        for (String point : points) {
            y = block(g, words().of("guide." + point), Ink.plain(10.5), y) + 5;
        }
        return y + GAP / 2;
    }

    private double block(Graphics2D g, String text, java.awt.Font font, double top) {
        return TextBlock.of(text, font, width() - 2 * MARGIN).paint(g, Ink.TEXT, MARGIN, top) + 4;
    }

    private static double picture(
            Graphics2D g, double height, double top, java.util.function.Consumer<GuidePictures> what) {
        AffineTransform before = g.getTransform();
        g.translate(MARGIN, top);
        what.accept(new GuidePictures(g));
        g.setTransform(before);
        return top + height + GAP;
    }
}
