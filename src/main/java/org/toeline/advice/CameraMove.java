package org.toeline.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.toeline.camera.Camera;
import org.toeline.camera.Pose;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Readings;

/**
 * Where a camera would tell more: the same player and the same marks, seen from a few other places, estimated again, and
 * the place kept that makes the view's main reading narrowest.
 *
 * @param nearerM       how much nearer the camera should stand, metres; negative: farther off
 * @param besideM       how far it should move to the side, in the direction of {@link CameraStand#besideM()}
 * @param kind          the reading that gains
 * @param halfWidthNow  half of its 95 % interval, metres, radians or plain
 * @param halfWidthThen the same from the new place
 */
public record CameraMove(
        View view, double nearerM, double besideM, ReadingKind kind, double halfWidthNow, double halfWidthThen) {

    /** A smaller gain than this is not worth carrying a tripod for, share of the half width. */
    private static final double WORTH_WHILE = 0.10;
    /** The player must not come nearer to the picture's edge than this, share of its shorter side. */
    private static final double MARGIN = 0.04;

    private static final double[] NEARER = {1, 0.9, 0.8, 0.7, 0.6, 0.5, 1.2};

    /** The best move; empty when the place is as good as any, or when the view is not marked. Takes tens of milliseconds. */
    public static Optional<CameraMove> best(Assessment assessment, View view) {
        Optional<Reading> main = main(assessment.readings(), view);
        Optional<Camera> camera = assessment.posture().camera(view);
        if (main.isEmpty() || camera.isEmpty()) {
            return Optional.empty();
        }
        CameraStand stand = CameraStand.of(assessment.posture(), view).orElseThrow();
        List<WorldPoint> places = new ArrayList<>();
        for (double share : NEARER) {
            for (double beside : new double[] {stand.besideM(), opposite(view)}) {
                places.add(place(camera.get(), view, share, beside));
            }
        }
        // each is an estimate of its own: as many at once as there are processors; of equals, the first
        return places.parallelStream()
                .flatMap(place -> from(place, assessment, view, stand, camera.get(), main.get()).stream())
                .min(Comparator.comparingDouble(CameraMove::halfWidthThen))
                .filter(m -> m.halfWidthThen < (1 - WORTH_WHILE) * m.halfWidthNow);
    }

    private static Optional<CameraMove> from(
            WorldPoint place, Assessment assessment, View view, CameraStand stand, Camera camera, Reading main) {
        Optional<Camera> moved = moved(assessment.posture(), camera, place);
        return moved.flatMap(c -> seen(assessment, view, c)).flatMap(sheet -> of(sheet, stand, moved.get(), main));
    }

    /** The reading that a view is filmed for, or the first that there is. */
    private static Optional<Reading> main(List<Reading> readings, View view) {
        ReadingKind wanted =
                switch (view) {
                    case FACE_ON -> ReadingKind.BALL_TO_LEAD_SHOULDER;
                    case DOWN_THE_LINE -> ReadingKind.SHOULDERS_TO_FEET;
                    case TEE -> ReadingKind.BALL_ABOVE_CROWN;
                };
        return readings.stream().filter(r -> r.kind() == wanted).findFirst();
    }

    /** Square to the target line: opposite the ball, or behind the hands, half-way between ball and toes. */
    private static double opposite(View view) {
        return view == View.DOWN_THE_LINE ? 0.4 : 0;
    }

    private static Optional<CameraMove> of(MarkSheet sheet, CameraStand stand, Camera moved, Reading now) {
        Posture posture = PostureEstimator.estimate(sheet);
        return Readings.of(posture).stream()
                .filter(r -> r.kind() == now.kind())
                .findFirst()
                .map(then -> {
                    WorldPoint at = moved.pose().position();
                    double beside = stand.view() == View.DOWN_THE_LINE ? at.h() : at.t();
                    return new CameraMove(
                            stand.view(),
                            stand.distanceM() - Math.hypot(at.t(), at.h()),
                            beside - stand.besideM(),
                            now.kind(),
                            (now.high() - now.low()) / 2,
                            (then.high() - then.low()) / 2);
                });
    }

    /** That share of the camera's distance away, so far to the side, as high as it is. */
    private static WorldPoint place(Camera camera, View view, double share, double besideM) {
        WorldPoint at = camera.pose().position();
        return view == View.DOWN_THE_LINE
                ? new WorldPoint(at.t() * share, besideM, at.u())
                : new WorldPoint(besideM, at.h() * share, at.u());
    }

    /** The camera at that place, level, with the player in its middle. */
    private static Optional<Camera> moved(Posture posture, Camera camera, WorldPoint place) {
        WorldPoint middle = middle(posture);
        return place.distance(middle) < 0.3
                ? Optional.empty()
                : Optional.of(new Camera(camera.lens(), Pose.looking(place, middle, 0)));
    }

    private static WorldPoint middle(Posture posture) {
        WorldPoint ball = posture.ball();
        List<WorldPoint> seen = new ArrayList<>();
        for (Landmark landmark : Landmark.values()) {
            if (posture.has(landmark)) {
                seen.add(posture.at(landmark));
            }
        }
        double low = 0;
        double high = seen.stream().mapToDouble(WorldPoint::u).max().orElse(ball.u());
        double t = seen.stream().mapToDouble(WorldPoint::t).average().orElse(ball.t());
        double h = seen.stream().mapToDouble(WorldPoint::h).average().orElse(ball.h());
        return new WorldPoint(t, h / 2, (low + high) / 2);
    }

    /** What the coach would mark from there; empty when something would fall outside the picture. */
    private static Optional<MarkSheet> seen(Assessment assessment, View view, Camera camera) {
        MarkSheet sheet = assessment.sheet();
        Posture posture = assessment.posture();
        ViewMarks marks = sheet.view(view).orElseThrow();
        Eye eye = new Eye(camera, marks, sheet.handedness());
        ViewMarks other =
                ViewMarks.empty(view, marks.widthPx(), marks.heightPx()).withLens(marks.lens());
        for (Mark mark : marks.marks()) {
            Optional<ImagePoint> at = eye.sees(posture.at(mark.landmark()));
            if (at.isEmpty()) {
                return Optional.empty();
            }
            other = other.withMark(new Mark(mark.landmark(), at.get(), mark.sigmaPx(), mark.origin()));
        }
        Camera before = posture.camera(view).orElseThrow();
        for (FloorMark mark : marks.floorMarks()) {
            Optional<ImagePoint> at = eye.ground(before, mark.at()).flatMap(eye::sees);
            if (at.isPresent()) {
                other = other.withFloorMark(new FloorMark(mark.pointId(), at.get(), mark.sigmaPx()));
            }
        }
        if (marks.ball().isPresent()) {
            Optional<ImagePoint> at = eye.sees(posture.ball());
            if (at.isEmpty()) {
                return Optional.empty();
            }
            BallMark ball = marks.ball().get();
            double nearer = before.depthM(posture.ball()) / camera.depthM(posture.ball());
            OptionalDouble diameter = ball.diameterPx().isPresent()
                    ? OptionalDouble.of(ball.diameterPx().getAsDouble() * nearer)
                    : OptionalDouble.empty();
            other = other.withBall(
                    Optional.of(new BallMark(at.get(), diameter, ball.sigmaPx(), ball.diameterSigmaPx())));
        }
        return Optional.of(sheet.withView(other));
    }

    /** A camera with the picture it makes. */
    private record Eye(Camera camera, ViewMarks marks, Handedness handedness) {

        Optional<ImagePoint> sees(WorldPoint point) {
            double margin = MARGIN * Math.min(marks.widthPx(), marks.heightPx());
            return camera.project(point)
                    .map(this::shown)
                    .filter(p -> p.xPx() > margin
                            && p.xPx() < marks.widthPx() - margin
                            && p.yPx() > margin
                            && p.yPx() < marks.heightPx() - margin);
        }

        private ImagePoint shown(ImagePoint p) {
            return handedness == Handedness.LEFT ? p.mirrored(marks.widthPx()) : p;
        }

        /** The point of the ground that another camera saw at a pixel. */
        Optional<WorldPoint> ground(Camera other, ImagePoint pixel) {
            ImagePoint p = shown(pixel);
            Pose pose = other.pose();
            double x = (p.xPx() - other.lens().cxPx()) / other.lens().focalPx();
            double y = (p.yPx() - other.lens().cyPx()) / other.lens().focalPx();
            WorldPoint way = new WorldPoint(
                    pose.forward().t() + x * pose.right().t() + y * pose.down().t(),
                    pose.forward().h() + x * pose.right().h() + y * pose.down().h(),
                    pose.forward().u() + x * pose.right().u() + y * pose.down().u());
            if (way.u() > -1e-3) {
                return Optional.empty();
            }
            double far = -pose.position().u() / way.u();
            return Optional.of(pose.position().plus(far * way.t(), far * way.h(), far * way.u()));
        }
    }
}
