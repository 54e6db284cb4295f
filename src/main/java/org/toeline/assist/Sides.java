package org.toeline.assist;

import java.util.Optional;
import org.toeline.assist.PoseModel.Seen;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.View;

/**
 * Which side of a body is which. The model is certain of it even where it is wrong: on a real man it took left for right in a
 * quarter of one camera's pictures with a score of 0.998 and more. What is known beforehand decides: face-on the player looks
 * into the camera, so that shoulders and hips lie in one order; down the line the trail foot is the nearer one and so the
 * lower one in the picture.
 *
 * @param seen   with its sides as they must be
 * @param turned whether they were exchanged for that
 * @param legs   whether knees and feet lie as the view has them; if not, they are not to be trusted
 */
record Sides(Seen seen, boolean turned, boolean legs) {

    /** Shoulders nearer to each other than this share of the span show no order. The man's lie at 0.13 and more. */
    private static final double LEAST_SHOULDERS = 0.06;
    /** Feet are never crossed at address; by this share they may seem to be. */
    private static final double CROSSED = 0.02;
    /** One foot is lower than the other by at least this share of the span. */
    private static final double LOWER = 0.012;

    private static final int SHOULDER = 11;
    private static final int HIP = 23;
    private static final int KNEE = 25;
    private static final int ANKLE = 27;
    private static final int HEEL = 29;
    private static final int BODY = 33;

    /**
     * Empty where the order cannot be told.
     *
     * @param rightTrails whether the player's right side is the trail side
     */
    static Optional<Sides> of(Seen seen, View view, boolean rightTrails) {
        return view == View.FACE_ON ? faceOn(seen) : Optional.of(downTheLine(seen, rightTrails));
    }

    private static Optional<Sides> faceOn(Seen seen) {
        double shoulders = toTheRight(seen, SHOULDER);
        double hips = toTheRight(seen, HIP);
        if (Math.abs(shoulders) < LEAST_SHOULDERS || shoulders * hips < 0) {
            return Optional.empty();
        }
        Seen right = shoulders > 0 ? seen : exchanged(seen);
        boolean legs = toTheRight(right, ANKLE) > -CROSSED && toTheRight(right, KNEE) > -CROSSED;
        return Optional.of(new Sides(right, shoulders < 0, legs));
    }

    private static Sides downTheLine(Seen seen, boolean rightTrails) {
        double lower = (rightTrails ? 1 : -1) * (rightLower(seen, ANKLE) + rightLower(seen, HEEL)) / 2;
        boolean turned = lower < -LOWER;
        return new Sides(turned ? exchanged(seen) : seen, turned, Math.abs(lower) >= LOWER);
    }

    /** How far the left of a pair lies to the picture's right of the other, share of the span. */
    private static double toTheRight(Seen seen, int left) {
        return (seen.points()[left].xPx() - seen.points()[left + 1].xPx()) / PoseSearch.span(seen);
    }

    private static double rightLower(Seen seen, int left) {
        return (seen.points()[left + 1].yPx() - seen.points()[left].yPx()) / PoseSearch.span(seen);
    }

    /** Eyes, ears, corners of the mouth and everything below come in pairs, the left one first; the nose does not. */
    private static Seen exchanged(Seen seen) {
        ImagePoint[] points = seen.points().clone();
        double[] visibility = seen.visibility().clone();
        for (int left = 7; left < BODY; left += 2) {
            points[left] = seen.points()[left + 1];
            points[left + 1] = seen.points()[left];
            visibility[left] = seen.visibility()[left + 1];
            visibility[left + 1] = seen.visibility()[left];
        }
        return new Seen(seen.score(), points, visibility);
    }
}
