/**
 * What the program can find in a clip by itself: the moment of address, the outline of the ball, straight edges and rods,
 * how marks move while the player stands still, and where the landmarks of a body may be. It suggests; the coach decides.
 * Everything works without it. The body-pose model behind the suggested landmarks is described in NOTICE.txt beside it.
 *
 * <p>May use: {@code video}, {@code mark}, {@code geometry}.
 */
@NullMarked
package org.toeline.assist;

import org.jspecify.annotations.NullMarked;
