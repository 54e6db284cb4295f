package org.toeline.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.PinnedWords;

/** Words pinned to a picture as they are drawn: on a slip of paper, with an arrow to what they are about. */
public final class PinnedNote {

    private static final double WIDE_IN_TYPE = 11;
    private static final double ROUND_IN_TYPE = 0.5;
    private static final double CLEAR_IN_TYPE = 0.35;

    private final TextBlock text;
    private final double type;
    private final Rectangle2D box;
    private final Point2D tip;

    private PinnedNote(TextBlock text, double type, Rectangle2D box, Point2D tip) {
        this.text = text;
        this.type = type;
        this.box = box;
        this.tip = tip;
    }

    /**
     * @param toDevice from picture pixels to the device
     * @param frame    within which the words stay, device units
     * @param type     size of the type, device units
     */
    public static PinnedNote of(PinnedWords words, AffineTransform toDevice, Rectangle2D frame, double type) {
        TextBlock text =
                TextBlock.of(words.text(), Ink.bold(type), Math.min(type * WIDE_IN_TYPE, frame.getWidth() * 0.8));
        double widest = text.lines().stream()
                .mapToDouble(l -> Ink.width(l, text.font()))
                .max()
                .orElse(0);
        double width = widest + type;
        double height = text.height() + type * 0.6;
        Point2D middle = on(words.stand(), toDevice);
        double clear = type * CLEAR_IN_TYPE;
        double x = Math.min(frame.getMaxX() - clear - width, middle.getX() - width / 2);
        double y = Math.min(frame.getMaxY() - clear - height, middle.getY() - height / 2);
        return new PinnedNote(
                text,
                type,
                new Rectangle2D.Double(
                        Math.max(frame.getMinX() + clear, x), Math.max(frame.getMinY() + clear, y), width, height),
                on(words.at(), toDevice));
    }

    private static Point2D on(ImagePoint p, AffineTransform toDevice) {
        return toDevice.transform(new Point2D.Double(p.xPx(), p.yPx()), null);
    }

    /** Where the words stand, device units. */
    public Rectangle2D box() {
        return box;
    }

    /** Where the arrow ends. */
    public Point2D tip() {
        return tip;
    }

    /** What is written. */
    public String said() {
        return String.join(" ", text.lines());
    }

    public void paint(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        if (!box.contains(tip)) {
            arrow(g);
        }
        RoundRectangle2D slip = new RoundRectangle2D.Double(
                box.getX(), box.getY(), box.getWidth(), box.getHeight(), type * ROUND_IN_TYPE, type * ROUND_IN_TYPE);
        g.setColor(Ink.PAPER);
        g.fill(slip);
        g.setColor(Ink.TEXT);
        g.setStroke(new BasicStroke((float) (type * 0.06)));
        g.draw(slip);
        text.paint(g, Ink.TEXT, box.getX() + type * 0.5, box.getY() + type * 0.3);
    }

    private void arrow(Graphics2D g) {
        double fromX = box.getCenterX();
        double fromY = box.getCenterY();
        double angle = Math.atan2(tip.getY() - fromY, tip.getX() - fromX);
        double head = type * 0.7;
        Line2D shaft = new Line2D.Double(
                fromX, fromY, tip.getX() - head * 0.8 * Math.cos(angle), tip.getY() - head * 0.8 * Math.sin(angle));
        Path2D end = new Path2D.Double();
        end.moveTo(0, 0);
        end.lineTo(-head, head * 0.45);
        end.lineTo(-head, -head * 0.45);
        end.closePath();
        AffineTransform place = AffineTransform.getTranslateInstance(tip.getX(), tip.getY());
        place.rotate(angle);
        end.transform(place);
        stroke(g, shaft, Ink.TEXT, type * 0.34);
        g.setStroke(new BasicStroke((float) (type * 0.2), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(end);
        stroke(g, shaft, Ink.PAPER, type * 0.16);
        g.fill(end);
    }

    private static void stroke(Graphics2D g, Line2D line, Color color, double width) {
        g.setColor(color);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(line);
    }
}
