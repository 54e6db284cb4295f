package org.toeline.posture;

import org.toeline.mark.View;

/**
 * A point seen in a picture: two rows, across and down. Its standard deviation joins the click's with what the point's
 * own spread in the world (how well a landmark can be told on a clothed person) makes in this picture.
 *
 * <p>With d = P − C, (X, Y, Z) its parts along the camera's right, down and forward, x = X/Z, y = Y/Z, r² = x² + y²:
 * px = cx + f·x·q·(1 + k1 r² + k2 r⁴), and q = Z²/(Z² − ρ²) is what moves the middle of the outline of a sphere of
 * radius ρ from the image of its centre (q = 1 for a point).
 */
final class Sight implements Knowledge {

    /** Nearer than this to the camera's plane a point is not seen, metres. */
    static final double NEAREST_M = 0.05;

    /** What a residual becomes when the point is behind the camera: a step that leads there is refused. */
    private static final double UNSEEN = 1e9;

    final View view;
    /** The mark's name in documents. */
    final String name;

    final double xPx;
    final double yPx;
    private final Source source;
    private final Place place;
    private final double clickPx;
    private final double spreadM;
    private final double radiusM;
    private double sigmaPx;

    private final double[] point = new double[3];
    private final double[] d = new double[3];
    private final int[] index;
    private final double[] across;
    private final double[] below;

    Sight(
            View view,
            String name,
            Source source,
            Place place,
            double xPx,
            double yPx,
            double clickPx,
            double spreadM,
            double radiusM) {
        this.view = view;
        this.name = name;
        this.source = source;
        this.place = place;
        this.xPx = xPx;
        this.yPx = yPx;
        this.clickPx = clickPx;
        this.spreadM = spreadM;
        this.radiusM = radiusM;
        this.sigmaPx = clickPx;
        int n = 7 + place.axis().length;
        this.index = new int[n];
        this.across = new double[n];
        this.below = new double[n];
    }

    @Override
    public Source source() {
        return source;
    }

    double sigmaPx() {
        return sigmaPx;
    }

    @Override
    public void weigh(State state, double softPx) {
        ViewFrame f = state.frame(view);
        double spreadPx = spreadM * f.focal / Math.max(depth(state, f), 0.3);
        sigmaPx = Math.sqrt(clickPx * clickPx + spreadPx * spreadPx + softPx * softPx);
    }

    private double depth(State state, ViewFrame f) {
        place.evaluate(state.x, point);
        for (int i = 0; i < 3; i++) {
            d[i] = point[i] - f.position[i];
        }
        return ViewFrame.dot(d, f.forward);
    }

    @Override
    public void rows(State state, RowSink sink) {
        ViewFrame f = state.frame(view);
        double z = depth(state, f);
        if (z < NEAREST_M) {
            sink.row(UNSEEN, 0, index, across);
            sink.row(UNSEEN, 0, index, below);
            return;
        }
        double x = ViewFrame.dot(d, f.right) / z;
        double y = ViewFrame.dot(d, f.down) / z;
        double r2 = x * x + y * y;
        double q = z * z / (z * z - radiusM * radiusM);
        double bend = 1 + r2 * (f.k1 + f.k2 * r2);
        double scale = f.focal * q * bend;
        double bendBy = 2 * f.focal * q * (f.k1 + 2 * f.k2 * r2);
        // derivatives of the pixel by the normalised coordinates
        double xx = (scale + bendBy * x * x) / sigmaPx;
        double xy = bendBy * x * y / sigmaPx;
        double yy = (scale + bendBy * y * y) / sigmaPx;
        double rx = (f.cx + scale * x - xPx) / sigmaPx;
        double ry = (f.cy + scale * y - yPx) / sigmaPx;
        index[0] = f.base;
        across[0] = scale * x / sigmaPx;
        below[0] = scale * y / sigmaPx;
        // q falls as the depth grows
        double qByZ = -2 * radiusM * radiusM * q / (z * (z * z - radiusM * radiusM)) * scale / (q * sigmaPx);
        angle(4, f, f.rightByHeading, f.downByHeading, f.forwardByHeading, x, y, z, xx, xy, yy);
        angle(5, f, f.rightByPitch, f.downByPitch, f.forwardByPitch, x, y, z, xx, xy, yy);
        across[4] += qByZ * x * ViewFrame.dot(d, f.forwardByHeading);
        below[4] += qByZ * y * ViewFrame.dot(d, f.forwardByHeading);
        across[5] += qByZ * x * ViewFrame.dot(d, f.forwardByPitch);
        below[5] += qByZ * y * ViewFrame.dot(d, f.forwardByPitch);
        index[6] = f.base + 6;
        across[6] = xx * y - xy * x;
        below[6] = xy * y - yy * x;
        for (int i = 0; i < 3; i++) {
            double dx = (f.right[i] - x * f.forward[i]) / z;
            double dy = (f.down[i] - y * f.forward[i]) / z;
            index[1 + i] = f.base + 1 + i;
            across[1 + i] = -(xx * dx + xy * dy + qByZ * x * f.forward[i]);
            below[1 + i] = -(xy * dx + yy * dy + qByZ * y * f.forward[i]);
        }
        for (int k = 0; k < place.axis().length; k++) {
            index[7 + k] = place.index()[k];
            across[7 + k] = -across[1 + place.axis()[k]] * place.factor()[k];
            below[7 + k] = -below[1 + place.axis()[k]] * place.factor()[k];
        }
        sink.row(rx, index.length, index, across);
        sink.row(ry, index.length, index, below);
    }

    private void angle(
            int at,
            ViewFrame f,
            double[] right,
            double[] down,
            double[] forward,
            double x,
            double y,
            double z,
            double xx,
            double xy,
            double yy) {
        double dz = ViewFrame.dot(d, forward);
        double dx = (ViewFrame.dot(d, right) - x * dz) / z;
        double dy = (ViewFrame.dot(d, down) - y * dz) / z;
        index[at] = f.base + at;
        across[at] = xx * dx + xy * dy;
        below[at] = xy * dx + yy * dy;
    }
}
