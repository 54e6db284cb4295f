/**
 * What changed between lessons: the readings of a player over lessons as they were stated, changes, the player's own spread
 * from repeats, trends, and what may be said of them.
 *
 * <p>May use: {@code advice}, {@code ledger} and what those may use. Used by {@code paint}, {@code desk} and {@code cli}.
 */
@NullMarked
package org.toeline.across;

import org.jspecify.annotations.NullMarked;
