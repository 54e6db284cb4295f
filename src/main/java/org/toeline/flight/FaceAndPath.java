package org.toeline.flight;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where a ball starts and which way it bends, as it goes with the club's path and the face's angle to it: it starts between
 * the two, 61 to 83 % of the way from the path to the face (Proceedings 2018, 2(6), 249), and bends the way the face looks
 * from the path. Struck off the middle of the face it may do neither.
 *
 * @param nearPathRad start at 61 %, from the target line towards {@code h}
 * @param nearFaceRad start at 83 %
 * @param bendRad     the face from the path: positive bends towards {@code h}
 */
public record FaceAndPath(double nearPathRad, double nearFaceRad, double bendRad) {

    private static final double LEAST = 0.61;
    private static final double MOST = 0.83;

    /** Of a shot that has both. */
    public static Optional<FaceAndPath> of(Shot shot) {
        OptionalDouble path = shot.figure(ShotFigure.CLUB_PATH);
        OptionalDouble face = shot.figure(ShotFigure.FACE_TO_PATH);
        return path.isEmpty() || face.isEmpty()
                ? Optional.empty()
                : Optional.of(of(path.getAsDouble(), face.getAsDouble()));
    }

    static FaceAndPath of(double pathRad, double faceToPathRad) {
        return new FaceAndPath(pathRad + LEAST * faceToPathRad, pathRad + MOST * faceToPathRad, faceToPathRad);
    }

    public double leastRad() {
        return Math.min(nearPathRad, nearFaceRad);
    }

    public double mostRad() {
        return Math.max(nearPathRad, nearFaceRad);
    }
}
