package org.toeline.paint;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/**
 * A part of a picture in a frame of a drawing. Only the pixels within the frame are handed on, to whatever file: what was cut
 * off leaves with nothing.
 *
 * @param frame    where it stands in the drawing
 * @param toDevice from picture pixels, as shown, to the drawing
 * @param covered  the picture, with the face covered if that was asked for
 */
public record PictureFrame(Rectangle2D frame, AffineTransform toDevice, BufferedImage covered) {

    /** A part of a picture, in its pixels, brought to the size of the frame. */
    public static PictureFrame of(Rectangle2D part, Rectangle2D frame, BufferedImage covered) {
        double scale = frame.getWidth() / part.getWidth();
        return new PictureFrame(
                frame,
                new AffineTransform(
                        scale, 0, 0, scale, frame.getX() - scale * part.getX(), frame.getY() - scale * part.getY()),
                covered);
    }

    public void paint(Graphics2D g) {
        g.setColor(Color.DARK_GRAY);
        g.fill(frame);
        double scale = toDevice.getScaleX();
        int x = (int) Math.floor((frame.getX() - toDevice.getTranslateX()) / scale);
        int y = (int) Math.floor((frame.getY() - toDevice.getTranslateY()) / scale);
        Rectangle2D part = new Rectangle2D.Double(
                        x, y, Math.ceil(frame.getWidth() / scale) + 1, Math.ceil(frame.getHeight() / scale) + 1)
                .createIntersection(new Rectangle2D.Double(0, 0, covered.getWidth(), covered.getHeight()));
        if (part.isEmpty()) {
            return;
        }
        BufferedImage cut = covered.getSubimage(
                (int) part.getX(), (int) part.getY(), (int) part.getWidth(), (int) part.getHeight());
        AffineTransform place = new AffineTransform(toDevice);
        place.translate(part.getX(), part.getY());
        Shape clip = g.getClip();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.clip(frame);
        g.drawImage(plain(cut), place, null);
        g.setClip(clip);
    }

    /** A copy that holds these pixels and no others. */
    private static BufferedImage plain(BufferedImage image) {
        BufferedImage plain = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = plain.createGraphics();
        g.drawImage(image, 0, 0, null);
        g.dispose();
        return plain;
    }
}
