package org.toeline.posture;

import java.util.List;
import org.toeline.camera.UsualLens;
import org.toeline.mark.LensNote;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/**
 * How a phone usually stands when it films a player at address, and what lens it has: means and standard deviations,
 * wide on purpose. Common practice, checked against nothing but geometry: a phone on a bag or a tripod, some metres
 * off, roughly in place, the whole player in the picture. Where the camera looks is left nearly open: the marks decide
 * it, and to count its aim as well as its place would be to count one habit twice.
 */
final class CameraHabits {

    /** A stated focal length without a stated spread. */
    private static final double STATED_LOG_FOCAL_SIGMA = 0.03;

    /** Where else a camera may start: its distance from the ball times this, and turned about the ball by so much, radians. */
    private static final double[][] ELSEWHERE = {{0.5, 0}, {2.0, 0}, {1, 0.6}, {1, -0.6}, {1, Math.PI}};

    static final int OTHER_STARTS = ELSEWHERE.length;

    private CameraHabits() {}

    /** Mean and standard deviation of position (t, h, u; metres, from the ball), heading, pitch, roll (radians). */
    private record Stand(double[] mean, double[] sigma) {}

    private static Stand stand(View view) {
        return switch (view) {
            case FACE_ON ->
                new Stand(
                        new double[] {-0.10, -3.0, 1.15, Math.PI / 2, -0.08, 0},
                        new double[] {0.60, 1.1, 0.36, 0.30, 0.20, 0.03});
            case DOWN_THE_LINE ->
                new Stand(
                        new double[] {-3.6, 0.40, 1.15, 0, -0.08, 0}, new double[] {1.1, 0.50, 0.36, 0.30, 0.20, 0.03});
            case TEE ->
                new Stand(
                        new double[] {0, -0.8, 0.12, Math.PI / 2, -0.08, 0},
                        new double[] {0.35, 0.35, 0.06, 0.40, 0.20, 0.05});
        };
    }

    static double logFocal(ViewMarks v) {
        return Math.log(v.lens().focalPx().orElse(UsualLens.MAIN.focalPx(v.widthPx(), v.heightPx())));
    }

    private static double logFocalSigma(LensNote lens) {
        if (lens.focalPx().isEmpty()) {
            return UsualLens.MAIN.logSigma();
        }
        double focal = lens.focalPx().getAsDouble();
        return lens.focalSigmaPx().isPresent()
                ? Math.max(lens.focalSigmaPx().getAsDouble() / focal, 1e-5)
                : STATED_LOG_FOCAL_SIGMA;
    }

    static void start(ViewMarks v, Unknowns unknowns, double[] x) {
        int base = unknowns.view(v.view());
        x[base] = logFocal(v);
        System.arraycopy(stand(v.view()).mean, 0, x, base + 1, 6);
        x[base + 1] += x[unknowns.ball()];
        x[base + 2] += x[unknowns.ball() + 1];
    }

    /** Moves a camera of the usual start elsewhere, still looking at where the player usually is. */
    static void elsewhere(int which, ViewMarks v, Unknowns unknowns, double[] x) {
        int base = unknowns.view(v.view());
        int ball = unknowns.ball();
        double t = x[base + 1] - x[ball];
        double h = x[base + 2] - x[ball + 1];
        double times = ELSEWHERE[which][0];
        double turn = ELSEWHERE[which][1];
        x[base + 1] = x[ball] + times * (t * Math.cos(turn) - h * Math.sin(turn));
        x[base + 2] = x[ball + 1] + times * (t * Math.sin(turn) + h * Math.cos(turn));
        x[base + Unknowns.HEADING] += turn;
    }

    static void know(ViewMarks v, Unknowns unknowns, List<Knowledge> into) {
        int base = unknowns.view(v.view());
        Stand stand = stand(v.view());
        into.add(Usually.one(Source.LENS, base, logFocal(v), logFocalSigma(v.lens())));
        for (int i = 0; i < 2; i++) {
            into.add(Usually.difference(
                    Source.CAMERA, base + 1 + i, unknowns.ball() + i, stand.mean[i], stand.sigma[i]));
        }
        for (int i = 2; i < 6; i++) {
            into.add(Usually.one(Source.CAMERA, base + 1 + i, stand.mean[i], stand.sigma[i]));
        }
    }
}
