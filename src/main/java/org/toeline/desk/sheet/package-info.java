/**
 * The lesson's own screen: the pictures, the body map and the findings of one lesson, and what reads, keeps and searches
 * clips for it.
 *
 * <p>May use: every part of the desk but {@code desk} itself and the other screens. Owned by the JavaFX thread.
 */
@NullMarked
package org.toeline.desk.sheet;

import org.jspecify.annotations.NullMarked;
