/**
 * What the coach put on the frames: views, landmarks, marks, floor references; and the two facts that give them
 * meaning, club and handedness. Everything here is an immutable value, in the pixels of the picture as it was shown:
 * nothing is mirrored yet, whatever the handedness.
 *
 * <p>{@link org.toeline.mark.MarkSheet} is the whole of what was marked. Undo is a list of earlier sheets.
 *
 * <p>May use: {@code geometry}. Used by everything after it.
 */
@NullMarked
package org.toeline.mark;

import org.jspecify.annotations.NullMarked;
