/**
 * The catalogue of readings. {@link org.toeline.reading.ReadingKind} holds each as one formula in the world frame with
 * its definition, sign and unit; {@link org.toeline.reading.Reading} is its value for a posture, never without its
 * uncertainty.
 *
 * <p>May use: {@code posture} and what that may use.
 */
@NullMarked
package org.toeline.reading;

import org.jspecify.annotations.NullMarked;
