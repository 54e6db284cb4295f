package org.toeline.paint;

import static org.toeline.mark.Landmark.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.advice.Finding;
import org.toeline.advice.Range;
import org.toeline.geometry.GolfBall;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.posture.Posture;

/**
 * Where what is out of range should be: moved in the world to half way between the limit it passed and the aim, and seen by
 * the estimated camera. Picture pixels, as shown.
 *
 * @param lines   lines as they should be
 * @param circles a ball or a head as it should be: its middle, and a point of its edge
 * @param moves   what moves from where to where
 */
public record Ghost(List<List<ImagePoint>> lines, List<List<ImagePoint>> circles, List<Move> moves) {

    private static final double BALL_M = GolfBall.USUAL_DIAMETER_M;
    private static final double BALL_RADIUS_M = BALL_M / 2;
    private static final double HEAD_RADIUS_M = 0.10;
    /** How far a knee moves when it bends by a radian more, of legs of usual length. */
    private static final double KNEE_M = 0.21;

    /** From where to where something moves. */
    public record Move(ImagePoint from, ImagePoint to) {}

    public Ghost {
        lines = List.copyOf(lines);
        circles = List.copyOf(circles);
        moves = List.copyOf(moves);
    }

    /** Empty when the view does not see it or nothing is to be moved. */
    public static Optional<Ghost> of(Posture posture, View view, Finding finding) {
        if (finding.verdict().filter(v -> v.isOut()).isEmpty()
                || posture.camera(view).isEmpty()) {
            return Optional.empty();
        }
        Range range = finding.range().orElseThrow();
        double value = finding.reading().value();
        double shift = ((value < range.low() ? range.low() : range.high()) + range.aim()) / 2 - value;
        Draft draft = new Draft(posture, view);
        draft.move(finding, shift);
        return draft.moves.isEmpty()
                ? Optional.empty()
                : Optional.of(new Ghost(draft.lines, draft.circles, draft.moves));
    }

    /** What is drawn so far. */
    private static final class Draft {

        private final Posture posture;
        private final View view;
        private final List<List<ImagePoint>> lines = new ArrayList<>();
        private final List<List<ImagePoint>> circles = new ArrayList<>();
        private final List<Move> moves = new ArrayList<>();

        private Draft(Posture posture, View view) {
            this.posture = posture;
            this.view = view;
        }

        private void move(Finding finding, double shift) {
            double value = finding.reading().value();
            switch (finding.kind()) {
                case BALL_ABOVE_CROWN -> ball(0, shift * BALL_M);
                case TEE_HEIGHT -> ball(0, shift);
                case BALL_TO_LEAD_SHOULDER, BALL_TO_LEAD_HEEL -> ball(shift, 0);
                case BALL_IN_STANCE ->
                    ball(shift * (at(LEAD_HEEL).t() - at(TRAIL_HEEL).t()), 0);
                case LEAD_FOOT_OUTSIDE_SHOULDER -> foot(LEAD_HEEL, LEAD_TOE, shift, 0);
                case STANCE_WIDTH -> stance(shift);
                case STANCE_TO_SHOULDER_WIDTH ->
                    stance(shift * at(LEAD_SHOULDER).distance(at(TRAIL_SHOULDER)));
                case FEET_TO_TARGET -> feet(shift);
                case SHOULDERS_TO_TARGET, SHOULDERS_TO_FEET -> shoulders(shift, 0);
                case SHOULDER_TILT -> shoulders(0, shift);
                case TRAIL_HAND_LOWER -> hand(-shift);
                case SIDE_BEND -> spine(shift, 0);
                case FORWARD_BEND -> spine(0, shift);
                case HEAD_TO_BALL -> head(shift);
                case SHAFT_LEAN -> shaft(value + shift);
                case KNEE_FLEX -> knee(shift);
                case BALL_DISTANCE -> distance(shift);
                case HANDS_TO_BODY -> hands(shift);
                case LEAD_FOOT_FLARE -> flare(LEAD_HEEL, LEAD_TOE, -shift);
                case TRAIL_FOOT_FLARE -> flare(TRAIL_HEEL, TRAIL_TOE, shift);
            }
        }

        private WorldPoint at(Landmark landmark) {
            return posture.at(landmark);
        }

        private void ball(double t, double u) {
            WorldPoint ball = posture.ball();
            moved(ball, ball.plus(t, 0, u));
            circle(ball.plus(t, 0, u), BALL_RADIUS_M);
        }

        private void foot(Landmark heel, Landmark toe, double t, double h) {
            moved(at(heel), at(heel).plus(t, h, 0));
            if (posture.has(toe)) {
                line(at(heel).plus(t, h, 0), at(toe).plus(t, h, 0));
            }
        }

        private void stance(double wider) {
            WorldPoint lead = at(LEAD_HEEL);
            WorldPoint trail = at(TRAIL_HEEL);
            foot(LEAD_HEEL, LEAD_TOE, wider / 2, 0);
            foot(TRAIL_HEEL, TRAIL_TOE, -wider / 2, 0);
            line(trail.plus(-wider / 2, 0, 0), lead.plus(wider / 2, 0, 0));
        }

        /** One foot goes back: the lead foot to open the line, the trail foot to close it. */
        private void feet(double turn) {
            Landmark stays = turn > 0 ? TRAIL_TOE : LEAD_TOE;
            Landmark goes = turn > 0 ? LEAD_TOE : TRAIL_TOE;
            WorldPoint to = turned(at(goes), at(stays), turn);
            line(at(stays), to);
            moved(at(goes), to);
        }

        private void shoulders(double turn, double tilt) {
            WorldPoint lead = at(LEAD_SHOULDER);
            WorldPoint trail = at(TRAIL_SHOULDER);
            WorldPoint middle =
                    new WorldPoint((lead.t() + trail.t()) / 2, (lead.h() + trail.h()) / 2, (lead.u() + trail.u()) / 2);
            WorldPoint to = tilted(turned(lead, middle, turn), middle, tilt);
            WorldPoint other =
                    new WorldPoint(2 * middle.t() - to.t(), 2 * middle.h() - to.h(), 2 * middle.u() - to.u());
            line(other, to);
            if (tilt == 0) {
                moved(lead, to);
            } else {
                moved(trail, other);
            }
        }

        /** Turned on the ground, to the lead side above zero. */
        private static WorldPoint turned(WorldPoint p, WorldPoint about, double angle) {
            double t = p.t() - about.t();
            double h = p.h() - about.h();
            double c = Math.cos(angle);
            double s = Math.sin(angle);
            return new WorldPoint(about.t() + c * t - s * h, about.h() + s * t + c * h, p.u());
        }

        private static WorldPoint tilted(WorldPoint p, WorldPoint about, double angle) {
            double t = p.t() - about.t();
            double h = p.h() - about.h();
            double along = Math.hypot(t, h);
            double up = p.u() - about.u();
            double to = Math.cos(angle) * along - Math.sin(angle) * up;
            return new WorldPoint(
                    about.t() + t * to / along,
                    about.h() + h * to / along,
                    about.u() + Math.sin(angle) * along + Math.cos(angle) * up);
        }

        private void hand(double up) {
            WorldPoint to = at(TRAIL_WRIST).plus(0, 0, up);
            line(to, at(LEAD_WRIST));
            moved(at(TRAIL_WRIST), to);
        }

        private void spine(double side, double forward) {
            WorldPoint hips = middle(LEAD_HIP, TRAIL_HIP);
            WorldPoint top = middle(LEAD_SHOULDER, TRAIL_SHOULDER);
            double u = top.u() - hips.u();
            double across = side == 0 ? top.h() - hips.h() : top.t() - hips.t();
            double angle = Math.atan2(-across, u) + side + forward;
            double length = Math.hypot(across, u);
            double to = -length * Math.sin(angle);
            WorldPoint moved = side == 0
                    ? new WorldPoint(top.t(), hips.h() + to, hips.u() + length * Math.cos(angle))
                    : new WorldPoint(hips.t() + to, top.h(), hips.u() + length * Math.cos(angle));
            line(hips, moved);
            moved(top, moved);
        }

        private WorldPoint middle(Landmark a, Landmark b) {
            return new WorldPoint(
                    (at(a).t() + at(b).t()) / 2, (at(a).h() + at(b).h()) / 2, (at(a).u() + at(b).u()) / 2);
        }

        private void head(double t) {
            WorldPoint to = at(HEAD_CENTRE).plus(t, 0, 0);
            circle(to, HEAD_RADIUS_M);
            moved(at(HEAD_CENTRE), to);
        }

        private void shaft(double lean) {
            WorldPoint head = at(CLUB_HEAD);
            WorldPoint grip = at(GRIP_END);
            double length = Math.hypot(grip.t() - head.t(), grip.u() - head.u());
            WorldPoint to =
                    new WorldPoint(head.t() + length * Math.sin(lean), grip.h(), head.u() + length * Math.cos(lean));
            line(head, to);
            moved(grip, to);
        }

        private void knee(double more) {
            WorldPoint to = at(TRAIL_KNEE).plus(0, -KNEE_M * more, 0);
            line(at(TRAIL_HIP), to, at(TRAIL_ANKLE));
            moved(at(TRAIL_KNEE), to);
        }

        private void distance(double farther) {
            line(at(TRAIL_TOE).plus(0, farther, 0), at(LEAD_TOE).plus(0, farther, 0));
            moved(at(TRAIL_TOE), at(TRAIL_TOE).plus(0, farther, 0));
        }

        /** Away from the body goes to the ball, which is the other way than the line along toes counts. */
        private void hands(double farther) {
            WorldPoint to = at(GRIP_END).plus(0, -farther, 0);
            if (posture.has(CLUB_HEAD)) {
                line(at(CLUB_HEAD), to);
            }
            moved(at(GRIP_END), to);
        }

        private void flare(Landmark heel, Landmark toe, double turn) {
            WorldPoint to = turned(at(toe), at(heel), -turn);
            line(at(heel), to);
            moved(at(toe), to);
        }

        private void moved(WorldPoint from, WorldPoint to) {
            Optional<ImagePoint> a = posture.seen(view, from);
            Optional<ImagePoint> b = posture.seen(view, to);
            if (a.isPresent() && b.isPresent()) {
                moves.add(new Move(a.get(), b.get()));
            }
        }

        private void circle(WorldPoint middle, double radiusM) {
            Optional<ImagePoint> m = posture.seen(view, middle);
            Optional<ImagePoint> e = posture.seen(view, middle.plus(0, 0, radiusM));
            if (m.isPresent() && e.isPresent()) {
                circles.add(List.of(m.get(), e.get()));
            }
        }

        private void line(WorldPoint... along) {
            List<ImagePoint> points = new ArrayList<>();
            for (WorldPoint p : along) {
                posture.seen(view, p).ifPresent(points::add);
            }
            if (points.size() == along.length) {
                lines.add(List.copyOf(points));
            }
        }
    }
}
