package org.toeline.paint;

import java.awt.Graphics2D;

/**
 * Something that paints itself onto a canvas of its own size, whatever the canvas is: the screen, a picture file, a page. A
 * pure function of what it was made from; any thread.
 */
public interface Drawing {

    /** Width in the drawing's own units; a picture file has as many pixels. */
    double width();

    double height();

    /** Paints from (0, 0) to (width, height). */
    void paint(Graphics2D g);

    /** The drawing in words, for those who do not see it. */
    String described();

    /** What it is about, in a few words. */
    String title();
}
