/**
 * The drawn figure at address: to-do list and way to pick a mark.
 *
 * <p>May use: everything below {@code desk}, {@code desk.lesson}, {@code desk.dialog} and {@code desk.work}.
 */
@NullMarked
package org.toeline.desk.bodymap;

import org.jspecify.annotations.NullMarked;
