/**
 * The player in three dimensions: the one estimator, from marks and references to landmarks in the world with their
 * joint uncertainty, and which mark disagrees with the rest.
 *
 * <p>May use: {@code camera} and what that may use.
 */
@NullMarked
package org.toeline.posture;

import org.jspecify.annotations.NullMarked;
