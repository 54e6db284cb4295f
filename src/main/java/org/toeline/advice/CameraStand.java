package org.toeline.advice;

import java.util.Optional;
import org.toeline.camera.Camera;
import org.toeline.camera.Pose;
import org.toeline.geometry.Finite;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.View;
import org.toeline.posture.Posture;

/**
 * Where the camera of a view stood, as estimated, in the terms of someone who carries it.
 *
 * @param distanceM level distance from the ball, metres, above zero
 * @param heightM   above the ground, metres
 * @param besideM   face-on and tee: how far from opposite the ball, positive towards the target; down the line: how far
 *                  from behind the ball, positive towards the player's side; metres
 * @param leanRad   how far the picture leans, positive when its right side dips; radians
 */
public record CameraStand(View view, double distanceM, double heightM, double besideM, double leanRad) {

    public CameraStand {
        Finite.requirePositive(distanceM, "distanceM");
        Finite.require(heightM, "heightM");
        Finite.require(besideM, "besideM");
        Finite.require(leanRad, "leanRad");
    }

    /** Empty when nothing is marked in the view. */
    public static Optional<CameraStand> of(Posture posture, View view) {
        return posture.camera(view).map(camera -> of(camera, view));
    }

    private static CameraStand of(Camera camera, View view) {
        Pose pose = camera.pose();
        WorldPoint at = pose.position();
        return new CameraStand(
                view,
                Math.max(0.01, Math.hypot(at.t(), at.h())),
                at.u(),
                view == View.DOWN_THE_LINE ? at.h() : at.t(),
                pose.rollRad());
    }
}
