package org.toeline.flight;

/**
 * Where a ball starts and which way it bends, as it goes with the club's path and the face's angle to it: it starts between
 * the two, 61 to 83 % of the way from the path to the face (Proceedings 2018, 2(6), 249), and bends the way the face looks
 * from the path. Struck off the middle of the face it may do neither. From the target line towards {@code h}.
 *
 * @param leastRad least start, by share and by what is not known of path and face
 * @param mostRad  most start
 * @param bend     which way it bends
 */
public record FaceAndPath(double leastRad, double mostRad, Bend bend) {

    private static final double LEAST = 0.61;
    private static final double MOST = 0.83;

    /** Which way a ball bends, looking at the target. */
    public enum Bend {
        LEFT,
        RIGHT,
        /** The face may look to either side of the path. */
        UNCLEAR
    }

    /** A figure and half the width of its interval. */
    public record Known(double rad, double halfRad) {}

    public static FaceAndPath of(Known path, Known faceToPath) {
        double near = path.rad + LEAST * faceToPath.rad;
        double far = path.rad + MOST * faceToPath.rad;
        double half = Math.hypot(path.halfRad, MOST * faceToPath.halfRad);
        Bend bend = Math.abs(faceToPath.rad) <= faceToPath.halfRad
                ? Bend.UNCLEAR
                : faceToPath.rad > 0 ? Bend.LEFT : Bend.RIGHT;
        return new FaceAndPath(Math.min(near, far) - half, Math.max(near, far) + half, bend);
    }
}
