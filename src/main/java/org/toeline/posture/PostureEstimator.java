package org.toeline.posture;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.toeline.camera.Camera;
import org.toeline.mark.Landmark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;

/**
 * The one estimator: everything unknown (cameras, landmarks, the ball, the shift between two takes) is fitted to
 * everything known (marks, floor, verticals, the ball's outline, how people and phones usually stand), each weighted by
 * its standard deviation; the maximum a posteriori. There is no special case for one view or no reference: what is less
 * known comes out wider.
 *
 * <p>A mark that does not fit the rest is left out, named among the {@link Posture#doubts()}, and the fit is made
 * again, so that the other readings do not suffer from it.
 */
public final class PostureEstimator {

    /** More wrong marks than this are not looked for. */
    private static final int MOST_DOUBTS = 6;
    /** How much looser the pictures are taken at first, from far off, pixels. */
    private static final double SOFT_PX = 40;

    private PostureEstimator() {}

    /** A pure function of the sheet; takes some milliseconds; any thread. */
    public static Posture estimate(MarkSheet sheet) {
        Set<Problem.MarkName> leftOut = new HashSet<>();
        List<Doubt> doubts = new ArrayList<>();
        Problem problem = new Problem(sheet, leftOut);
        Minimum minimum = new Minimum(problem.knowledge, problem.start());
        minimum.descend(SOFT_PX);
        minimum.descend(0);
        minimum.descend(0);
        Laplace laplace = new Laplace(problem.knowledge, minimum.state(), problem.unknowns);
        Posture.Fit fit = fit(problem, minimum);
        while (doubts.size() < MOST_DOUBTS) {
            Optional<Misfits.Misfit> worst = Misfits.worst(problem.knowledge, minimum.state(), laplace);
            if (worst.isEmpty()) {
                break;
            }
            Sight sight = worst.get().sight();
            doubts.add(new Doubt(
                    sight.view, sight.name, worst.get().offPx(), worst.get().odds(), true));
            leftOut.add(new Problem.MarkName(sight.view, sight.name));
            problem = new Problem(sheet, leftOut);
            minimum = new Minimum(problem.knowledge, minimum.state());
            minimum.descend(0);
            minimum.descend(0);
            laplace = new Laplace(problem.knowledge, minimum.state(), problem.unknowns);
        }
        return posture(problem, minimum.state(), fit, laplace, doubts);
    }

    private static Posture.Fit fit(Problem problem, Minimum minimum) {
        int[] rows = {0};
        problem.knowledge.forEach(k -> k.rows(minimum.state(), (residual, count, index, slope) -> rows[0]++));
        return new Posture.Fit(minimum.cost(), rows[0] - minimum.state().x.length);
    }

    static Posture posture(Problem problem, State state, Posture.Fit fit, Uncertainty laplace, List<Doubt> doubts) {
        Map<View, Camera> cameras = new EnumMap<>(View.class);
        int ball = problem.unknowns.ball();
        state.frames()
                .forEach((view, frame) -> cameras.put(
                        view, CameraFrame.fromBall(frame.camera(state.x), state.x[ball], state.x[ball + 1])));
        return new Posture(
                coordinates(problem, state.x), laplace, cameras, problem.used, problem.sheet.handedness(), doubts, fit);
    }

    static Coordinates coordinates(Problem problem, double[] x) {
        Unknowns unknowns = problem.unknowns;
        List<Landmark> landmarks = unknowns.landmarks();
        double[] values = new double[Coordinates.size(landmarks.size())];
        int ball = unknowns.ball();
        int at = 0;
        for (Landmark landmark : landmarks) {
            int from = unknowns.landmark(landmark);
            values[at++] = x[from] - x[ball];
            values[at++] = x[from + 1] - x[ball + 1];
            values[at++] = x[from + 2];
        }
        double diameter = x[ball + Unknowns.BALL_DIAMETER];
        values[at + 2] = x[ball + Unknowns.BALL_UNDERSIDE] + diameter / 2;
        values[at + 3] = diameter;
        return new Coordinates(
                landmarks, problem.ballMarked() ? Coordinates.BallKnown.MARKED : Coordinates.BallKnown.ASSUMED, values);
    }
}
