package org.toeline.camera;

import org.toeline.geometry.Finite;
import org.toeline.geometry.WorldPoint;

/**
 * Where a camera stands and looks, in the world frame, in the terms a person would use.
 *
 * @param position   the centre of projection
 * @param headingRad horizontal direction of the optical axis, atan2(h, t): π/2 for a square face-on view, 0 for a
 *                   square down-the-line view
 * @param pitchRad   elevation of the optical axis, in (−π/2, π/2), positive looking up
 * @param rollRad    turn of the camera about its axis, positive when the right side of the picture dips
 */
public record Pose(WorldPoint position, double headingRad, double pitchRad, double rollRad) {

    public Pose {
        Finite.require(headingRad, "headingRad");
        Finite.require(rollRad, "rollRad");
        if (!(Math.abs(pitchRad) < Math.PI / 2)) {
            throw new IllegalArgumentException("pitchRad is " + pitchRad + "; it must lie between −π/2 and π/2");
        }
    }

    /** The pose at {@code from} whose optical axis goes through {@code at}. */
    public static Pose looking(WorldPoint from, WorldPoint at, double rollRad) {
        WorldPoint d = at.minus(from);
        return new Pose(from, Math.atan2(d.h(), d.t()), Math.atan2(d.u(), Math.hypot(d.t(), d.h())), rollRad);
    }

    /** Unit vector along the picture's x axis, in the world. */
    public WorldPoint right() {
        double cr = Math.cos(rollRad);
        double sr = Math.sin(rollRad);
        WorldPoint r = levelRight();
        WorldPoint d = levelDown();
        return new WorldPoint(cr * r.t() + sr * d.t(), cr * r.h() + sr * d.h(), cr * r.u() + sr * d.u());
    }

    /** Unit vector along the picture's y axis, in the world. */
    public WorldPoint down() {
        double cr = Math.cos(rollRad);
        double sr = Math.sin(rollRad);
        WorldPoint r = levelRight();
        WorldPoint d = levelDown();
        return new WorldPoint(cr * d.t() - sr * r.t(), cr * d.h() - sr * r.h(), cr * d.u() - sr * r.u());
    }

    /** Unit vector along the optical axis, in the world. */
    public WorldPoint forward() {
        double cp = Math.cos(pitchRad);
        return new WorldPoint(cp * Math.cos(headingRad), cp * Math.sin(headingRad), Math.sin(pitchRad));
    }

    private WorldPoint levelRight() {
        return new WorldPoint(Math.sin(headingRad), -Math.cos(headingRad), 0);
    }

    /** forward × levelRight. */
    private WorldPoint levelDown() {
        double sp = Math.sin(pitchRad);
        return new WorldPoint(sp * Math.cos(headingRad), sp * Math.sin(headingRad), -Math.cos(pitchRad));
    }
}
