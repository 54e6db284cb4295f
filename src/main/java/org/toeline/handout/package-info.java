/**
 * What the player takes home: the annotated still and the page as PDF and HTML.
 *
 * <h2>The way in</h2>
 * {@link org.toeline.handout.Handout} is made from a lesson, its assessment and the address frames; it gives the
 * {@link org.toeline.handout.Still} and the page ({@code pdf}, {@code html}). {@link org.toeline.handout.StillOptions} say
 * which view and lines, whose it is ({@link org.toeline.handout.Signed}) and whether the face is covered
 * ({@link org.toeline.handout.FaceCover}). A still, like every {@link org.toeline.paint.Drawing}, paints itself onto any
 * {@code Graphics2D} in its own units, so a screen shows exactly what the files hold: scale the canvas by
 * {@code shown width / drawing.width()} and call {@code paint}; {@link org.toeline.handout.PictureFormat} makes the files.
 *
 * <p>May use: {@code paint}, {@code ledger} and what those may use. Used by {@code desk} and {@code cli}.
 */
@NullMarked
package org.toeline.handout;

import org.jspecify.annotations.NullMarked;
