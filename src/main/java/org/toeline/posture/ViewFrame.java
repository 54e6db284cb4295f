package org.toeline.posture;

import org.toeline.camera.Camera;
import org.toeline.camera.Lens;
import org.toeline.camera.Pose;
import org.toeline.geometry.WorldPoint;

/**
 * A view's camera at one point of the fit, with what the derivatives need. The model is that of
 * {@link org.toeline.camera.Camera}; the vectors are (t, h, u).
 */
final class ViewFrame {

    final int base;
    final double cx;
    final double cy;
    final double k1;
    final double k2;

    double focal;
    final double[] position = new double[3];
    final double[] right = new double[3];
    final double[] down = new double[3];
    final double[] forward = new double[3];
    final double[] rightByHeading = new double[3];
    final double[] downByHeading = new double[3];
    final double[] forwardByHeading = new double[3];
    final double[] rightByPitch = new double[3];
    final double[] downByPitch = new double[3];
    final double[] forwardByPitch = new double[3];

    ViewFrame(int base, double cx, double cy, double k1, double k2) {
        this.base = base;
        this.cx = cx;
        this.cy = cy;
        this.k1 = k1;
        this.k2 = k2;
    }

    /** Straight up or down has no heading. */
    private static final double STEEPEST = Math.PI / 2 - 1e-9;

    ViewFrame another() {
        return new ViewFrame(base, cx, cy, k1, k2);
    }

    void set(double[] x) {
        focal = Math.exp(x[base]);
        System.arraycopy(x, base + Unknowns.POSITION, position, 0, 3);
        double ch = Math.cos(x[base + Unknowns.HEADING]);
        double sh = Math.sin(x[base + Unknowns.HEADING]);
        double cp = Math.cos(x[base + Unknowns.PITCH]);
        double sp = Math.sin(x[base + Unknowns.PITCH]);
        double cr = Math.cos(x[base + Unknowns.ROLL]);
        double sr = Math.sin(x[base + Unknowns.ROLL]);
        put(forward, cp * ch, cp * sh, sp);
        put(forwardByHeading, -cp * sh, cp * ch, 0);
        put(forwardByPitch, -sp * ch, -sp * sh, cp);
        turn(right, down, cr, sr, sh, -ch, 0, sp * ch, sp * sh, -cp);
        turn(rightByHeading, downByHeading, cr, sr, ch, sh, 0, -sp * sh, sp * ch, 0);
        turn(rightByPitch, downByPitch, cr, sr, 0, 0, 0, cp * ch, cp * sh, sp);
    }

    private static void turn(
            double[] right,
            double[] down,
            double cr,
            double sr,
            double rt,
            double rh,
            double ru,
            double dt,
            double dh,
            double du) {
        put(right, cr * rt + sr * dt, cr * rh + sr * dh, cr * ru + sr * du);
        put(down, cr * dt - sr * rt, cr * dh - sr * rh, cr * du - sr * ru);
    }

    private static void put(double[] v, double t, double h, double u) {
        v[0] = t;
        v[1] = h;
        v[2] = u;
    }

    static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    /** However often the search went round, and over the top: the same camera by angles in their ranges. */
    Camera camera(double[] x) {
        double pitch = Math.IEEEremainder(x[base + Unknowns.PITCH], 2 * Math.PI);
        boolean over = Math.abs(pitch) > Math.PI / 2;
        double turned = over ? Math.PI : 0;
        double upright = over ? Math.copySign(Math.PI, pitch) - pitch : pitch;
        Pose pose = new Pose(
                new WorldPoint(position[0], position[1], position[2]),
                Math.IEEEremainder(x[base + Unknowns.HEADING] + turned, 2 * Math.PI),
                Math.max(-STEEPEST, Math.min(STEEPEST, upright)),
                Math.IEEEremainder(x[base + Unknowns.ROLL] + turned, 2 * Math.PI));
        return new Camera(new Lens(focal, cx, cy, k1, k2), pose);
    }
}
