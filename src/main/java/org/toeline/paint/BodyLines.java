package org.toeline.paint;

import static org.toeline.mark.Landmark.*;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Landmark;
import org.toeline.posture.Posture;

/** A player's figure as lines between the estimated landmarks: what was not marked is left out. */
final class BodyLines {

    private static final double HEAD_RADIUS_M = 0.10;
    private static final List<List<Landmark>> LINES = List.of(
            List.of(TRAIL_SHOULDER, LEAD_SHOULDER),
            List.of(LEAD_SHOULDER, LEAD_ELBOW, LEAD_WRIST),
            List.of(TRAIL_SHOULDER, TRAIL_ELBOW, TRAIL_WRIST),
            List.of(LEAD_SHOULDER, LEAD_HIP),
            List.of(TRAIL_SHOULDER, TRAIL_HIP),
            List.of(TRAIL_HIP, LEAD_HIP),
            List.of(LEAD_HIP, LEAD_KNEE, LEAD_ANKLE, LEAD_HEEL, LEAD_TOE),
            List.of(TRAIL_HIP, TRAIL_KNEE, TRAIL_ANKLE, TRAIL_HEEL, TRAIL_TOE),
            List.of(GRIP_END, CLUB_HEAD));

    private BodyLines() {}

    /**
     * The figure of one lesson as the camera of a lesson sees it, on the canvas of a plane.
     *
     * @param figure whose landmarks
     * @param from   whose camera
     */
    static Path2D of(Posture figure, Posture from, BallPlane plane) {
        Path2D path = new Path2D.Double();
        for (List<Landmark> line : LINES) {
            Optional<Point2D> before = Optional.empty();
            for (Landmark landmark : line) {
                Optional<Point2D> at = figure.has(landmark) ? plane.seen(figure.at(landmark), from) : Optional.empty();
                if (before.isPresent() && at.isPresent()) {
                    path.moveTo(before.get().getX(), before.get().getY());
                    path.lineTo(at.get().getX(), at.get().getY());
                }
                before = at.isPresent() ? at : before;
            }
        }
        head(figure, from, plane, path);
        return path;
    }

    private static void head(Posture figure, Posture from, BallPlane plane, Path2D path) {
        if (!figure.has(HEAD_CENTRE)) {
            return;
        }
        WorldPoint centre = figure.at(HEAD_CENTRE);
        Optional<Point2D> middle = plane.seen(centre, from);
        Optional<Point2D> top = plane.seen(centre.plus(0, 0, HEAD_RADIUS_M), from);
        if (middle.isPresent() && top.isPresent()) {
            double r = middle.get().distance(top.get());
            path.append(
                    new Ellipse2D.Double(middle.get().getX() - r, middle.get().getY() - r, 2 * r, 2 * r), false);
        }
    }
}
