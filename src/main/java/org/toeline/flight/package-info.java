/**
 * Shots and the flight of the ball: what was measured of a shot, the flight that follows from it, what no flight could
 * give, shots in and out of tables ({@code flight.table}) and two setups compared by their shots
 * ({@code flight.compare}).
 *
 * <p><b>Frame.</b> The world frame of {@link org.toeline.geometry}, its origin where the ball lay: {@code t} along the
 * target line, {@code u} up, and {@code h} so that the axes are right-handed: towards the side on which a
 * <em>right-handed</em> player stands, which is the <b>left</b> of the target line for whoever looks along it at the
 * target. Nothing is mirrored here for a left-handed player: a ball that flies to the left has {@code h > 0} whoever hit
 * it. {@link org.toeline.flight.Shot#mirrored()} is for whoever needs a shot in the mirrored frame of the marks.
 *
 * <p><b>Units.</b> Metres, seconds, radians, radians a second, kilograms. Units of a coach ({@link
 * org.toeline.flight.FigureUnit}) are met in tables and in print only.
 *
 * <p>May use: {@code geometry}. Used by {@code ledger}, {@code cli} and {@code desk}.
 */
@NullMarked
package org.toeline.flight;

import org.jspecify.annotations.NullMarked;
