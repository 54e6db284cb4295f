/**
 * A view's picture: zoom, pan, magnifier, marks placed and moved.
 *
 * <p>May use: everything below {@code desk}, and {@code desk.lesson} and {@code desk.work}.
 */
@NullMarked
package org.toeline.desk.picture;

import org.jspecify.annotations.NullMarked;
