/**
 * What changed from lesson to lesson of one player with one club: every reading as a row over time, and the address frames side
 * by side to one scale.
 *
 * <p>May use: everything below {@code desk}, {@code desk.screen}, {@code desk.records} and {@code desk.work}. Owned by the JavaFX
 * thread.
 */
@NullMarked
package org.toeline.desk.across;

import org.jspecify.annotations.NullMarked;
