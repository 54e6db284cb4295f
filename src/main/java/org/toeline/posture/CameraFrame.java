package org.toeline.posture;

import org.toeline.camera.Camera;
import org.toeline.camera.Pose;

/** Moves a camera from the frame of the floor layout to the frame whose origin is the ground under the ball. */
final class CameraFrame {

    private CameraFrame() {}

    static Camera fromBall(Camera camera, double ballT, double ballH) {
        Pose p = camera.pose();
        return new Camera(
                camera.lens(),
                new Pose(p.position().plus(-ballT, -ballH, 0), p.headingRad(), p.pitchRad(), p.rollRad()));
    }
}
