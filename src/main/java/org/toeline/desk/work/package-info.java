/**
 * Long work off the interface thread; one place that reports what went wrong.
 *
 * <p>May use: everything below {@code desk}, and {@code desk.lesson} and {@code desk.work}.
 */
@NullMarked
package org.toeline.desk.work;

import org.jspecify.annotations.NullMarked;
