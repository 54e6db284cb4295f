package org.toeline.paint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.paint.OverlayShapes.Kind;
import org.toeline.paint.OverlayShapes.Line;
import org.toeline.posture.Posture;
import org.toeline.reading.ReadingKind;

/** Collects the lines of one view: straight in the world, projected through the estimated camera. */
final class LineDrafts {

    private final Posture posture;
    private final View view;
    private final List<Line> lines = new ArrayList<>();

    LineDrafts(Posture posture, View view) {
        this.posture = posture;
        this.view = view;
    }

    List<Line> lines() {
        return List.copyOf(lines);
    }

    /** The point of the ball's line that is level with a landmark. */
    WorldPoint beside(Landmark landmark) {
        return new WorldPoint(posture.at(landmark).t(), 0, 0);
    }

    boolean has(Landmark... landmarks) {
        return Arrays.stream(landmarks).allMatch(posture::has);
    }

    WorldPoint middle(Landmark a, Landmark b) {
        WorldPoint p = posture.at(a);
        WorldPoint q = posture.at(b);
        return new WorldPoint((p.t() + q.t()) / 2, (p.h() + q.h()) / 2, (p.u() + q.u()) / 2);
    }

    /** From one landmark to another, and past both by so much. */
    void between(Kind kind, Optional<ReadingKind> reading, Landmark from, Landmark to, double pastM) {
        if (has(from, to)) {
            WorldPoint a = posture.at(from);
            WorldPoint b = posture.at(to);
            double f = pastM / Math.max(0.01, a.distance(b));
            WorldPoint d = b.minus(a);
            line(kind, reading, a.plus(-f * d.t(), -f * d.h(), -f * d.u()), b.plus(f * d.t(), f * d.h(), f * d.u()));
        }
    }

    void line(Kind kind, Optional<ReadingKind> reading, WorldPoint... along) {
        List<ImagePoint> points = new ArrayList<>();
        for (WorldPoint p : along) {
            Optional<ImagePoint> seen = posture.seen(view, p);
            if (seen.isEmpty()) {
                return;
            }
            points.add(seen.get());
        }
        lines.add(new Line(kind, points, reading));
    }
}
