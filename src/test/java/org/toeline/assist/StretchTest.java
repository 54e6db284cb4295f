package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.toeline.camera.Camera;
import org.toeline.camera.Lens;
import org.toeline.camera.Pose;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.video.Frame;

/** Against the outline of a sphere projected point by point: the circle in which a cone from the camera touches it. */
final class StretchTest {

    private static final double FOCAL_PX = 950;
    private static final Frame FRAME = new Frame(0, 0, 1280, 720, new int[1280 * 720]);
    private static final double RADIUS_M = 0.02135;

    @Test
    void theOutlineOfABallLowInThePictureBecomesACircle() {
        double[] before = radii(new Stretch(0, 0, 1, 0, 1));
        assertThat(before[1] / before[0]).as("drawn out").isGreaterThan(1.03);
        double[] radii = radii(Stretch.at(outline(0)[1], FRAME, FOCAL_PX));
        assertThat(radii[1] - radii[0]).isLessThan(0.02);
        assertThat((radii[0] + radii[1]) / 2).as("mean radius").isEqualTo((before[0] + before[1]) / 2, within(0.01));
    }

    @Test
    void whatIsMadeRoundComesBack() {
        Stretch stretch = Stretch.at(new ImagePoint(1100, 640), FRAME, FOCAL_PX);
        ImagePoint round = stretch.round(1109.5, 633.25);
        assertThat(stretch.seen(round.xPx(), round.yPx()).distancePx(new ImagePoint(1109.5, 633.25)))
                .isLessThan(1e-9);
        assertThat(stretch.round(1100, 640)).isEqualTo(new ImagePoint(1100, 640));
    }

    /** Least and largest distance of the outline from its middle. */
    private static double[] radii(Stretch stretch) {
        int n = 360;
        double x = 0;
        double y = 0;
        ImagePoint[] edge = new ImagePoint[n];
        for (int i = 0; i < n; i++) {
            ImagePoint p = outline(2 * Math.PI * i / n)[0];
            edge[i] = stretch.round(p.xPx(), p.yPx());
            x += edge[i].xPx() / n;
            y += edge[i].yPx() / n;
        }
        double[] radii = {Double.MAX_VALUE, 0};
        for (ImagePoint p : edge) {
            double r = p.distancePx(new ImagePoint(x, y));
            radii[0] = Math.min(radii[0], r);
            radii[1] = Math.max(radii[1], r);
        }
        return radii;
    }

    /** A point of the outline, and the ball's middle, in the picture. */
    private static ImagePoint[] outline(double turn) {
        WorldPoint ball = new WorldPoint(0.3, 0.1, 0.05);
        WorldPoint eye = new WorldPoint(-0.5, -2.5, 1.1);
        Camera camera =
                new Camera(Lens.centred(FOCAL_PX, 1280, 720), Pose.looking(eye, new WorldPoint(-0.1, 0.5, 0.75), 0.03));
        double[] to = {eye.t() - ball.t(), eye.h() - ball.h(), eye.u() - ball.u()};
        double away = Math.sqrt(to[0] * to[0] + to[1] * to[1] + to[2] * to[2]);
        double flat = Math.hypot(to[0], to[1]);
        double[] a = {-to[1] / flat, to[0] / flat, 0};
        double[] b = {-to[0] * to[2] / flat / away, -to[1] * to[2] / flat / away, flat / away};
        double up = RADIUS_M * RADIUS_M / away;
        double ring = RADIUS_M * Math.sqrt(1 - RADIUS_M * RADIUS_M / away / away);
        double[] at = {ball.t(), ball.h(), ball.u()};
        for (int k = 0; k < 3; k++) {
            at[k] += up * to[k] / away + ring * (a[k] * Math.cos(turn) + b[k] * Math.sin(turn));
        }
        return new ImagePoint[] {
            camera.project(new WorldPoint(at[0], at[1], at[2])).orElseThrow(),
            camera.project(ball).orElseThrow()
        };
    }
}
