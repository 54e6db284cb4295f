/**
 * A synthetic player at address in a practice bay, filmed by cameras that are known: sample clips whose truth is known,
 * and scenes of known truth for the tests of other packages.
 *
 * <p>{@link org.toeline.scene.Scenario} says who stands how, with which club, and where the cameras are;
 * {@link org.toeline.scene.Scenarios} names the sample lessons; {@link org.toeline.scene.Truth} holds what a perfect
 * measurement would find; {@link org.toeline.scene.SampleMedia} films it all. Every pixel goes through
 * {@link org.toeline.camera.Camera}, so the truth is exactly what the camera model says.
 *
 * <p>The world is that of {@code geometry}; for a left-handed player the scene is built for a right-handed one and the
 * finished picture is mirrored.
 *
 * <p>May use: {@code camera}, {@code mark}, {@code geometry}. Used by tests and studies only; no class of the program uses it.
 */
@NullMarked
package org.toeline.scene;

import org.jspecify.annotations.NullMarked;
