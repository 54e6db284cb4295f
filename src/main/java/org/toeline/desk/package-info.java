/**
 * The JavaFX application: one lesson is one sheet, read from left to right (pictures, body map, findings). A
 * sub-package a part; views bind, models decide, neither computes: that is {@code advice.Assessment}'s. Everything here
 * is owned by the JavaFX thread unless it says otherwise.
 *
 * <p>May use: everything but {@code cli}.
 */
@NullMarked
package org.toeline.desk;

import org.jspecify.annotations.NullMarked;
