/**
 * Players and lessons: found by two letters, opened by Enter; what is written of them, given out, taken in and deleted.
 *
 * <p>May use: {@code desk.screen}, {@code desk.records} and what those may use.
 */
@NullMarked
package org.toeline.desk.players;

import org.jspecify.annotations.NullMarked;
