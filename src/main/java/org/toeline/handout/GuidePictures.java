package org.toeline.handout;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import org.toeline.language.Sentences;
import org.toeline.paint.Ink;

/** The pictures of the guide, each drawn from its own corner. Seen from above, a right-hander faces up the page and the target is on the left. */
final class GuidePictures {

    private static final Color GRASS = new Color(0xE3EBDD);
    private static final Color ROD = new Color(0xD88A1D);
    private static final Color BODY = new Color(0xC9C6BF);
    private static final float LETTERS = 8.5f;

    private final Graphics2D g;
    private final Sentences words = Sentences.of(Guide.class);

    GuidePictures(Graphics2D g) {
        this.g = g;
    }

    /** Where the phones stand: 510 by 210. */
    void phones() {
        ground(510, 210);
        targetLine(450, 50, 70);
        ball(210, 70);
        feet(210, 122);
        // opposite the middle of the stance, on the ball's other side
        phone(210, 28, Math.PI / 2, "guide.face-on", 228, 24);
        phone(450, 108, Math.PI, "guide.down-the-line", 396, 138);
        view(210, 36, 172, 128, 248, 128);
        view(440, 108, 220, 62, 220, 150);
        say("guide.distance", 100, 196);
        say("guide.target", 50, 60);
    }

    /** Where the rods lie, in the measures the program begins with: 510 by 240. */
    void rods() {
        ground(510, 240);
        double scale = 150;
        double x = 255;
        double y = 48;
        targetLine(470, 40, y);
        ball(x, y);
        rod(x - 0.61 * scale, y + 0.15 * scale, x + 0.61 * scale, y + 0.15 * scale);
        rod(x, y + 0.18 * scale, x, y + 1.15 * scale);
        feet(x, y + 0.86 * scale);
        g.setColor(Ink.GREY);
        g.draw(new Line2D.Double(x + 40, y, x + 40, y + 0.13 * scale));
        letters("15 cm", x + 45, y + 0.1 * scale);
        letters("122 cm", x - 0.61 * scale, y + 0.15 * scale + 15);
        say("guide.target", 40, y - 10);
        say("guide.rod-along", x + 0.61 * scale + 10, y + 0.15 * scale + 3);
        say("guide.rod-across", x + 50, y + 1.1 * scale + 14);
    }

    /** What belongs in the picture: two frames of 240 by 170, side by side with their names. */
    void frames() {
        frame(0, "guide.face-on", true);
        frame(260, "guide.down-the-line", false);
    }

    private void frame(double left, String name, boolean faceOn) {
        AffineTransform before = g.getTransform();
        g.translate(left, 0);
        g.setColor(GRASS);
        g.fill(new Rectangle2D.Double(0, 0, 240, 170));
        g.setColor(Ink.GREY);
        g.setStroke(new BasicStroke(1.2f));
        g.draw(new Rectangle2D.Double(0, 0, 240, 170));
        g.draw(new Rectangle2D.Double(186, 20, 30, 108));
        g.setColor(BODY);
        g.setStroke(new BasicStroke(11, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        if (faceOn) {
            g.fill(new Ellipse2D.Double(102, 16, 20, 24));
            g.fill(new RoundRectangle2D.Double(88, 42, 48, 52, 14, 14));
            g.draw(new Line2D.Double(98, 94, 92, 140));
            g.draw(new Line2D.Double(126, 94, 134, 140));
            g.setColor(Ink.TEXT);
            g.setStroke(new BasicStroke(1.6f));
            g.draw(new Line2D.Double(114, 92, 126, 150));
            ball(128, 150);
            rod(56, 146, 176, 146);
            rod(116, 143, 115, 124);
        } else {
            g.fill(new Ellipse2D.Double(122, 18, 20, 24));
            g.draw(new Line2D.Double(124, 46, 92, 88));
            g.draw(new Line2D.Double(92, 88, 100, 116));
            g.draw(new Line2D.Double(100, 116, 92, 142));
            g.setStroke(new BasicStroke(6, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(new Line2D.Double(120, 54, 122, 90));
            g.setColor(Ink.TEXT);
            g.setStroke(new BasicStroke(1.6f));
            g.draw(new Line2D.Double(122, 90, 158, 150));
            ball(160, 150);
            rod(148, 160, 151, 132);
            rod(60, 146, 146, 146);
        }
        letters(words.of(name), 4, 182);
        g.setTransform(before);
    }

    private void ground(double width, double height) {
        g.setColor(GRASS);
        g.fill(new RoundRectangle2D.Double(0, 0, width, height, 10, 10));
    }

    private void targetLine(double from, double to, double y) {
        g.setColor(Ink.TEXT);
        g.setStroke(new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {5, 4}, 0));
        g.draw(new Line2D.Double(from, y, to, y));
        Path2D tip = new Path2D.Double();
        tip.moveTo(to - 8, y);
        tip.lineTo(to, y - 4);
        tip.lineTo(to, y + 4);
        tip.closePath();
        g.fill(tip);
        g.setStroke(new BasicStroke(1.2f));
    }

    private void ball(double x, double y) {
        Ellipse2D ball = new Ellipse2D.Double(x - 4, y - 4, 8, 8);
        g.setColor(Color.WHITE);
        g.fill(ball);
        g.setColor(Ink.TEXT);
        g.setStroke(new BasicStroke(1.2f));
        g.draw(ball);
    }

    private void feet(double x, double y) {
        for (double side : new double[] {-1, 1}) {
            AffineTransform before = g.getTransform();
            g.translate(x + side * 30, y);
            g.rotate(Math.toRadians(10 * side));
            g.setColor(BODY);
            g.fill(new RoundRectangle2D.Double(-7, -19, 14, 38, 14, 16));
            g.setTransform(before);
        }
    }

    private void rod(double fromX, double fromY, double toX, double toY) {
        g.setColor(ROD);
        g.setStroke(new BasicStroke(3.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(new Line2D.Double(fromX, fromY, toX, toY));
        g.setStroke(new BasicStroke(1.2f));
    }

    private void phone(double x, double y, double towards, String name, double nameX, double nameY) {
        AffineTransform before = g.getTransform();
        g.translate(x, y);
        g.rotate(towards);
        g.setColor(Ink.TEXT);
        g.fill(new RoundRectangle2D.Double(-4, -11, 8, 22, 3, 3));
        g.fill(new Rectangle2D.Double(4, -3, 4, 6));
        g.setTransform(before);
        say(name, nameX, nameY);
    }

    /** How much a phone sees. */
    private void view(double x, double y, double leftX, double leftY, double rightX, double rightY) {
        Path2D cone = new Path2D.Double();
        cone.moveTo(x, y);
        cone.lineTo(leftX, leftY);
        cone.lineTo(rightX, rightY);
        cone.closePath();
        g.setColor(new Color(0x00, 0x72, 0xB2, 36));
        g.fill(cone);
    }

    private void say(String key, double x, double y) {
        letters(words.of(key), x, y);
    }

    private void letters(String text, double x, double y) {
        AffineTransform before = g.getTransform();
        g.translate(x, 0);
        g.setColor(Ink.TEXT);
        Ink.line(g, text, Ink.plain(LETTERS), y);
        g.setTransform(before);
    }
}
