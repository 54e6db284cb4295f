/**
 * How a view sees the world: lens and pose, and the pixels that a world point falls on.
 *
 * <p>May use: {@code geometry}, {@code mark}. OpenCV is used inside for what it does well (lens calibration) and never
 * shows in a public signature.
 */
@NullMarked
package org.toeline.camera;

import org.jspecify.annotations.NullMarked;
