/**
 * What draws: ink, the lines over a frame, band gauges, rows across lessons and plots of shots, through
 * {@code java.awt.Graphics2D}, so that a screen and a sheet of paper show the same thing.
 *
 * <p>Lines are {@link org.toeline.paint.OverlayShapes}, painted by {@link org.toeline.paint.OverlayPainter} alone; a finding's
 * gauge by {@link org.toeline.paint.BandGauge}. A {@link org.toeline.paint.Drawing} paints itself in its own units.
 *
 * <p>May use: {@code advice}, {@code across}, {@code flight} and what those may use. Used by {@code handout} and {@code desk}.
 */
@NullMarked
package org.toeline.paint;

import org.jspecify.annotations.NullMarked;
