package org.toeline.posture;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.toeline.camera.Camera;
import org.toeline.mark.Landmark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.Stature;
import org.toeline.mark.View;

/**
 * The one estimator: everything unknown (cameras, landmarks, the ball, the shift between two takes) is fitted to
 * everything known (marks, floor, verticals, the ball's outline, how people and phones usually stand), each weighted by
 * its standard deviation; the maximum a posteriori. There is no special case for one view or no reference: what is less
 * known comes out wider.
 *
 * <p>A mark that does not fit the rest is named among the {@link Posture#doubts()} and kept in the reckoning: the posture
 * is the mixture of the {@link Hypotheses} that it is right and that it is wrong.
 */
public final class PostureEstimator {

    private PostureEstimator() {}

    /** A pure function of the sheet; takes some milliseconds; any thread. */
    public static Posture estimate(MarkSheet sheet) {
        Fitted whole = Fitted.whole(sheet);
        Hypotheses hypotheses = new Hypotheses(whole);
        Fitted likeliest = hypotheses.likeliest();
        return posture(
                likeliest.problem,
                likeliest.state,
                whole.fit(),
                likeliest.fit(),
                hypotheses.all(),
                hypotheses.doubts(),
                stature(likeliest.problem.unknowns, likeliest.state, likeliest.laplace));
    }

    /** How well a sheet's marks fit together when all are taken for right: what {@link Posture#fit()} answers, sooner. */
    public static Posture.Fit fit(MarkSheet sheet) {
        return Fitted.whole(sheet).fit();
    }

    /** The same sooner still, from the usual start alone: marks that belong together are found from there, others may not be. */
    public static Posture.Fit directFit(MarkSheet sheet) {
        return Fitted.direct(sheet).fit();
    }

    /** What one state says, with no mark in doubt. */
    static Posture posture(Problem problem, State state, Laplace laplace) {
        Hypothesis sure = new Hypothesis(1, coordinates(problem, state.x), laplace);
        return posture(
                problem,
                state,
                new Posture.Fit(0, 1),
                new Posture.Fit(0, 1),
                List.of(sure),
                List.of(),
                stature(problem.unknowns, state, laplace));
    }

    private static Posture posture(
            Problem problem,
            State state,
            Posture.Fit fit,
            Posture.Fit likeliestFit,
            List<Hypothesis> hypotheses,
            List<Doubt> doubts,
            Stature stature) {
        Map<View, Camera> cameras = new EnumMap<>(View.class);
        int ball = problem.unknowns.ball();
        state.frames()
                .forEach((view, frame) -> cameras.put(
                        view, CameraFrame.fromBall(frame.camera(state.x), state.x[ball], state.x[ball + 1])));
        return new Posture(
                hypotheses, cameras, problem.used, problem.sheet.handedness(), doubts, fit, likeliestFit, stature);
    }

    private static Stature stature(Unknowns unknowns, State state, Laplace laplace) {
        int size = unknowns.playerSize();
        double heightM = Population.USUAL_STATURE_M * Math.exp(state.x[size]);
        return new Stature(Math.max(0.8, Math.min(2.5, heightM)), heightM * laplace.sigma(size));
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
