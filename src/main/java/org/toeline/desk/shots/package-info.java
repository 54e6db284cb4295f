/**
 * The screen of the shots: a table to type them into, a table taken in from a file, their flights, two setups compared, and
 * what went together over lessons. The view binds, {@link org.toeline.desk.shots.ShotsModel} decides, the figures come from
 * {@code flight}.
 *
 * <p>May use: {@code desk.screen}, {@code desk.records}, {@code desk.work} and everything below the desk. Used by the desk's
 * window only. Owned by the JavaFX thread, but for what is handed to the background.
 */
@NullMarked
package org.toeline.desk.shots;

import org.jspecify.annotations.NullMarked;
