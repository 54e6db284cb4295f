/**
 * The frame that every dialog of the desk has: where it opens and how large, which button is the safe one, what is asked before
 * something typed is lost, and where a field's fault is said.
 *
 * <p>May use: {@code desk.Texts}. Used by all screens. Owned by the JavaFX thread.
 */
@NullMarked
package org.toeline.desk.dialog;

import org.jspecify.annotations.NullMarked;
