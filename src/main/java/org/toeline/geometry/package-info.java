/**
 * Points in pictures and in the world, and the ball's size; pure values.
 *
 * <h2>Conventions of the whole program, stated here once</h2>
 * <ul>
 *   <li><b>World frame.</b> Metres. Origin on the ground under the ball; {@code t} along the target line towards the
 *       target, {@code h} horizontal from the ball to the player's side, {@code u} up. Right-handed axes for a
 *       right-handed player; a left-handed player is mirrored at the door (image {@code x → width − x}), so that
 *       everything behind the door is written once, in lead and trail terms.</li>
 *   <li><b>Picture.</b> Pixels of the picture as shown (rotation applied, full resolution): {@code x} right, {@code y}
 *       down, origin at the top-left <em>corner</em>; the centre of the first pixel is (0.5, 0.5).</li>
 *   <li><b>Angles.</b> Radians inside, degrees only where a person reads them. A heading is measured from the target
 *       line towards the player's side, {@code atan2(h, t)} of a trail-to-lead vector, in (−π, π]; positive is
 *       <em>open</em>. An elevation is in [−π/2, π/2], positive up.</li>
 *   <li><b>Time.</b> Seconds or whole microseconds of a clip's presentation time; names say which.</li>
 * </ul>
 *
 * <p>May use: {@code language} alone, to say what is wrong with a value. Used by everyone.
 */
@NullMarked
package org.toeline.geometry;

import org.jspecify.annotations.NullMarked;
