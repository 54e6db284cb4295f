package org.toeline.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import org.toeline.advice.LengthUnit;
import org.toeline.advice.Words;
import org.toeline.geometry.WorldPoint;
import org.toeline.posture.Posture;

/**
 * A lesson's address frame to scale, to be looked at beside those of other lessons: the picture in the plane of the ball, the
 * ground and the plumb line at the ball, the player's figure, and that of another lesson over it.
 *
 * @param caption above the picture, such as the day
 * @param picture brought into the plane ({@link BallPlane#warp}); empty when there is none
 * @param remark  why there is none; empty when there is one
 * @param figure  the player as estimated in this lesson; empty when this view has no marks
 * @param own     whether its figure is drawn
 * @param over    another lesson's player, seen from this lesson's camera
 * @param words   for the length of the scale
 */
public record ComparedStill(
        BallPlane plane,
        String caption,
        Optional<BufferedImage> picture,
        String remark,
        Optional<Posture> figure,
        Own own,
        Optional<Over> over,
        Words words) {

    /** Whether the lesson's own figure is drawn. */
    public enum Own {
        DRAWN,
        HIDDEN
    }

    /** Another lesson's figure and what it is called. */
    public record Over(String caption, Posture figure) {}

    private static final Color OWN = new Color(0x56B4E9);
    private static final Color OTHER = new Color(0xE69F00);
    private static final double CAPTION_M = 0.17;

    /** Height over width of what is painted. */
    public double shape() {
        return (plane.heightPx() + CAPTION_M * plane.pxPerM()) / plane.widthPx();
    }

    /** As a picture of the plane's own size, the caption above it. */
    public BufferedImage image() {
        BufferedImage image = new BufferedImage(
                plane.widthPx(), (int) Math.round(plane.widthPx() * shape()), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            paint(g, new Rectangle2D.Double(0, 0, image.getWidth(), image.getHeight()));
        } finally {
            g.dispose();
        }
        return image;
    }

    /** Paints into a rectangle of device units that has this shape. */
    public void paint(Graphics2D g, Rectangle2D area) {
        AffineTransform before = g.getTransform();
        Shape clip = g.getClip();
        g.translate(area.getX(), area.getY());
        double scale = area.getWidth() / plane.widthPx();
        g.scale(scale, scale);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        double top = CAPTION_M * plane.pxPerM();
        g.setColor(new Color(0x24272B));
        g.fill(new Rectangle2D.Double(0, 0, plane.widthPx(), plane.heightPx() + top));
        Font font = Ink.fitting(caption, Ink.bold(top * 0.42), plane.widthPx() - top * 0.5);
        Ink.text(g, caption, font, Color.WHITE, top * 0.25, top * 0.62);
        g.translate(0, top);
        g.clip(new Rectangle2D.Double(0, 0, plane.widthPx(), plane.heightPx()));
        content(g, top);
        g.setTransform(before);
        g.setClip(clip);
    }

    private void content(Graphics2D g, double unit) {
        picture.ifPresent(p -> g.drawImage(p, 0, 0, null));
        double line = unit * 0.06;
        references(g, line);
        figure.ifPresent(here -> {
            if (own == Own.DRAWN) {
                stroke(
                        g,
                        BodyLines.of(here, here, plane),
                        OWN,
                        new BasicStroke((float) line, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            }
            over.ifPresent(o -> stroke(g, BodyLines.of(o.figure(), here, plane), OTHER, dashed(line)));
        });
        if (!remark.isEmpty()) {
            TextBlock block = TextBlock.of(remark, Ink.plain(unit * 0.42), plane.widthPx() - unit);
            block.paint(g, new Color(0xF2F0EB), unit * 0.5, unit * 0.4);
        }
        over.ifPresent(o -> legend(g, o.caption(), line, unit));
    }

    private static BasicStroke dashed(double line) {
        return new BasicStroke(
                (float) line,
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_ROUND,
                1,
                new float[] {(float) (line * 3.2), (float) (line * 2)},
                0);
    }

    /** Within a dark halo, so that it stands out over anything. */
    private static void stroke(Graphics2D g, Shape shape, Color color, BasicStroke stroke) {
        g.setColor(new Color(0, 0, 0, 120));
        g.setStroke(new BasicStroke(stroke.getLineWidth() * 1.9f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
        g.setColor(color);
        g.setStroke(stroke);
        g.draw(shape);
    }

    /** The ground and the plumb line through the ball, and a round length along the ground. */
    private void references(Graphics2D g, double line) {
        Point2D ball = plane.on(WorldPoint.ORIGIN);
        g.setColor(new Color(255, 255, 255, 150));
        g.setStroke(new BasicStroke(
                (float) (line * 0.45),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_ROUND,
                1,
                new float[] {(float) line, (float) line},
                0));
        g.draw(new Line2D.Double(0, ball.getY(), plane.widthPx(), ball.getY()));
        g.draw(new Line2D.Double(ball.getX(), 0, ball.getX(), plane.heightPx()));
        double y = plane.heightPx() - line * 2.5;
        double x = line * 4;
        int length = words.lengthUnit() == LengthUnit.INCH ? 20 : 50;
        double bar = length / words.lengthUnit().fromMetres(1) * plane.pxPerM();
        g.setStroke(new BasicStroke((float) (line * 0.7)));
        g.setColor(Color.WHITE);
        g.draw(new Line2D.Double(x, y, x + bar, y));
        for (double end : new double[] {x, x + bar}) {
            g.draw(new Line2D.Double(end, y - line * 1.2, end, y + line * 1.2));
        }
        Ink.textOverPicture(
                g,
                length + words.text("unit." + words.lengthUnit().id()),
                Ink.plain(line * 5.5),
                Color.WHITE,
                x + bar + line * 2,
                y + line * 1.4);
    }

    private void legend(Graphics2D g, String text, double line, double unit) {
        Font font = Ink.fitting(text, Ink.plain(unit * 0.36), plane.widthPx() * 0.5);
        double x = plane.widthPx() - Ink.width(text, font) - line * 3;
        double y = plane.heightPx() - line * 2;
        stroke(
                g,
                new Line2D.Double(x - unit * 0.9, y - line * 1.5, x - unit * 0.25, y - line * 1.5),
                OTHER,
                dashed(line));
        Ink.textOverPicture(g, text, font, Color.WHITE, x, y);
    }
}
