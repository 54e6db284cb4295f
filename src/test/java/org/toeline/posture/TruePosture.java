package org.toeline.posture;

import java.util.Map;
import java.util.Set;
import org.toeline.camera.Camera;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;

/**
 * A posture that is the truth itself, with the covariance that the same marks have there: what its readings state as
 * standard uncertainty is the Cramér–Rao bound at the truth, priors counted as observations.
 */
public final class TruePosture {

    private TruePosture() {}

    /** @param floor true places of the floor points, and {@code ball} where the ball lies in the layout */
    public static Posture of(
            MarkSheet sheet,
            Map<Landmark, WorldPoint> landmarks,
            WorldPoint ball,
            double diameterM,
            Map<View, Camera> cameras,
            WorldPoint shift,
            Map<String, WorldPoint> floor,
            WorldPoint layoutOfBall,
            double[] laidAgain) {
        Problem problem = new Problem(sheet, Set.of());
        State state = problem.start();
        double[] x = state.x.clone();
        Unknowns unknowns = problem.unknowns;
        boolean hasFloor = unknowns.hasFloor();
        double t = hasFloor ? layoutOfBall.t() : 0;
        double h = hasFloor ? layoutOfBall.h() : 0;
        cameras.forEach((view, camera) -> {
            int base = unknowns.view(view);
            x[base] = Math.log(camera.lens().focalPx());
            x[base + 1] = camera.pose().position().t() + t;
            x[base + 2] = camera.pose().position().h() + h;
            x[base + 3] = camera.pose().position().u();
            x[base + 4] = camera.pose().headingRad();
            x[base + 5] = camera.pose().pitchRad();
            x[base + 6] = camera.pose().rollRad();
        });
        landmarks.forEach((landmark, p) -> {
            if (unknowns.has(landmark)) {
                int at = unknowns.landmark(landmark);
                x[at] = p.t() + t;
                x[at + 1] = p.h() + h;
                x[at + 2] = p.u();
            }
        });
        x[unknowns.playerSize()] = Math.log(landmarksSize(landmarks));
        int b = unknowns.ball();
        x[b] = t;
        x[b + 1] = h;
        x[b + Unknowns.BALL_UNDERSIDE] = ball.u() - diameterM / 2;
        x[b + Unknowns.BALL_DIAMETER] = diameterM;
        unknowns.floor().forEach((id, at) -> {
            x[at] = floor.get(id).t() + t;
            x[at + 1] = floor.get(id).h() + h;
        });
        if (unknowns.hasShift()) {
            x[unknowns.shift()] = shift.t();
            x[unknowns.shift() + 1] = shift.h();
            x[unknowns.shift() + 2] = shift.u();
        }
        if (unknowns.hasLaidAgain()) {
            System.arraycopy(laidAgain, 0, x, unknowns.laidAgain(), 3);
        }
        state.moveTo(x);
        problem.knowledge.forEach(k -> k.weigh(state, 0));
        return posture(problem, state);
    }

    /** The player's size over the usual one, from the height of the shoulders' middle. */
    private static double landmarksSize(Map<Landmark, WorldPoint> landmarks) {
        Population any = Population.with(org.toeline.mark.Club.MID_IRON);
        double theirs = landmarks.get(Landmark.LEAD_SHOULDER).u()
                + landmarks.get(Landmark.TRAIL_SHOULDER).u();
        return theirs / (any.mean(Landmark.LEAD_SHOULDER, 2) + any.mean(Landmark.TRAIL_SHOULDER, 2));
    }

    private static Posture posture(Problem problem, State state) {
        return PostureEstimator.posture(problem, state, new Laplace(problem.knowledge, state, problem.unknowns));
    }
}
