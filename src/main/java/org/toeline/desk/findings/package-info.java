/**
 * The findings as band gauges, the one thing to change first on top.
 *
 * <p>May use: everything below {@code desk}, {@code desk.lesson}, {@code desk.dialog} and {@code desk.work}.
 */
@NullMarked
package org.toeline.desk.findings;

import org.jspecify.annotations.NullMarked;
