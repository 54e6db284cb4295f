package org.toeline.camera;

import java.util.Optional;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;

/** A lens at a pose: the map from the world to a picture. For a left-handed player it maps to the mirrored picture. */
public record Camera(Lens lens, Pose pose) {

    /** Points nearer to the camera's plane than this are not seen, metres. */
    public static final double NEAREST_M = 0.01;

    /** The pixel on which a world point falls; empty when it lies behind the camera. */
    public Optional<ImagePoint> project(WorldPoint point) {
        WorldPoint d = point.minus(pose.position());
        double z = dot(d, pose.forward());
        if (z < NEAREST_M) {
            return Optional.empty();
        }
        return Optional.of(lens.pixel(dot(d, pose.right()) / z, dot(d, pose.down()) / z));
    }

    /** Distance of a world point from the camera's plane, metres, negative behind the camera. */
    public double depthM(WorldPoint point) {
        return dot(point.minus(pose.position()), pose.forward());
    }

    /** How far a world point lies to the right of the optical axis, as the picture has it, metres. */
    public double rightM(WorldPoint point) {
        return dot(point.minus(pose.position()), pose.right());
    }

    /** How far a world point lies below the optical axis, as the picture has it, metres. */
    public double downM(WorldPoint point) {
        return dot(point.minus(pose.position()), pose.down());
    }

    private static double dot(WorldPoint a, WorldPoint b) {
        return a.t() * b.t() + a.h() * b.h() + a.u() * b.u();
    }
}
