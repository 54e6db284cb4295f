/**
 * The words of the desk, from its resource bundle.
 *
 * <p>May use: nothing of the project. Used by every part of the desk.
 */
@NullMarked
package org.toeline.desk.text;

import org.jspecify.annotations.NullMarked;
