package org.toeline.posture;

import org.toeline.mark.View;

/**
 * Something upright seen in a picture: the line from one end to the other runs as the image of the world's vertical
 * does at its middle. In normalised coordinates that image runs along (R_u − x·F_u, D_u − y·F_u), R, D, F the camera's
 * right, down and forward; the residual is how far one end lies beside it.
 */
final class Upright implements Knowledge {

    private final View view;
    private final double xPx;
    private final double yPx;
    private final double dxPx;
    private final double dyPx;
    private final double sigmaPx;
    private final int[] index = new int[3];
    private final double[] slope = new double[3];

    /** The ends in pixels, freed of the lens's distortion; each has {@code clickPx} across the line. */
    Upright(View view, double x1, double y1, double x2, double y2, double clickPx) {
        this.view = view;
        this.xPx = (x1 + x2) / 2;
        this.yPx = (y1 + y2) / 2;
        this.dxPx = x2 - x1;
        this.dyPx = y2 - y1;
        this.sigmaPx = clickPx * Math.sqrt(2);
    }

    @Override
    public Source source() {
        return Source.VERTICALS;
    }

    @Override
    public void rows(State state, RowSink sink) {
        ViewFrame f = state.frame(view);
        double x = (xPx - f.cx) / f.focal;
        double y = (yPx - f.cy) / f.focal;
        double ex = f.right[2] - x * f.forward[2];
        double ey = f.down[2] - y * f.forward[2];
        double n = Math.hypot(ex, ey);
        double beside = (dxPx * ey - dyPx * ex) / n;
        // by focal length: x and y shrink as it grows
        index[0] = f.base;
        slope[0] = by(x * f.forward[2], y * f.forward[2], ex, ey, n, beside);
        index[1] = f.base + Unknowns.PITCH;
        slope[1] = by(
                f.rightByPitch[2] - x * f.forwardByPitch[2],
                f.downByPitch[2] - y * f.forwardByPitch[2],
                ex,
                ey,
                n,
                beside);
        index[2] = f.base + Unknowns.ROLL;
        slope[2] = by(f.down[2], -f.right[2], ex, ey, n, beside);
        sink.row(beside / sigmaPx, 3, index, slope);
    }

    private double by(double dex, double dey, double ex, double ey, double n, double beside) {
        double across = (dxPx * dey - dyPx * dex) / n;
        return (across - beside * (ex * dex + ey * dey) / (n * n)) / sigmaPx;
    }
}
