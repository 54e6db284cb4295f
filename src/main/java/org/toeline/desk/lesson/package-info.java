/**
 * The lesson being worked on: its marks, what is selected, undo and redo; knows no control.
 *
 * <p>May use: everything below {@code desk}, and {@code desk.lesson} and {@code desk.work}.
 */
@NullMarked
package org.toeline.desk.lesson;

import org.jspecify.annotations.NullMarked;
