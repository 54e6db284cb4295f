/**
 * What the player takes home: one painter for the lines over a picture and for the band gauges, wherever they are
 * drawn, the annotated still, and the page as PDF and HTML. Everything is drawn through {@code java.awt.Graphics2D}.
 *
 * <p>May use: {@code advice}, {@code ledger} and what those may use. Used by {@code desk} and {@code cli}.
 */
@NullMarked
package org.toeline.handout;

import org.jspecify.annotations.NullMarked;
