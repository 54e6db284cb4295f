/**
 * Looking through the film: how time goes by while it plays, the small pictures it plays with, both views in step, and the strip
 * below the pictures. Nothing in it changes what is marked.
 *
 * <p>May use: everything below {@code desk}, and {@code desk.lesson}, {@code desk.text} and {@code desk.work}. Owned by the JavaFX
 * thread.
 */
@NullMarked
package org.toeline.desk.film;

import org.jspecify.annotations.NullMarked;
