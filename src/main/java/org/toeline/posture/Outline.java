package org.toeline.posture;

import org.toeline.mark.View;

/**
 * The ball's mean diameter in a picture. A sphere of radius ρ at depth Z is seen as an ellipse with half axes
 * f·ρ/√(Z² − ρ²) and that times √(1 + r²) to first order, r the distance from the axis in normalised coordinates.
 */
final class Outline implements Knowledge {

    private final View view;
    private final int ball;
    private final Place place;
    private final double diameterPx;
    private final double sigmaPx;
    private final int[] index = new int[11];
    private final double[] slope = new double[11];

    Outline(View view, int ball, double diameterPx, double sigmaPx) {
        this.view = view;
        this.ball = ball;
        this.place = Place.ball(ball);
        this.diameterPx = diameterPx;
        this.sigmaPx = sigmaPx;
    }

    @Override
    public Source source() {
        return Source.BALL;
    }

    @Override
    public void rows(State state, RowSink sink) {
        ViewFrame f = state.frame(view);
        double[] d = new double[3];
        place.evaluate(state.x, d);
        for (int i = 0; i < 3; i++) {
            d[i] -= f.position[i];
        }
        double z = ViewFrame.dot(d, f.forward);
        if (z < Sight.NEAREST_M) {
            sink.row(1e9, 0, index, slope);
            return;
        }
        double x = ViewFrame.dot(d, f.right) / z;
        double y = ViewFrame.dot(d, f.down) / z;
        double diameter = state.x[ball + Unknowns.BALL_DIAMETER];
        double root2 = z * z - diameter * diameter / 4;
        double secant = Math.sqrt(1 + x * x + y * y);
        double across = f.focal * diameter / Math.sqrt(root2) / sigmaPx;
        double seen = across * (1 + secant) / 2;
        // by the ball's parts along the camera's right, down and forward
        double byX = across * x / (2 * secant * z);
        double byY = across * y / (2 * secant * z);
        double byZ = -seen * z / root2 - x * byX - y * byY;
        index[0] = f.base;
        slope[0] = seen;
        for (int i = 0; i < 3; i++) {
            double by = byX * f.right[i] + byY * f.down[i] + byZ * f.forward[i];
            index[1 + i] = f.base + 1 + i;
            slope[1 + i] = -by;
            index[7 + i] = ball + i;
            slope[7 + i] = by;
        }
        index[4] = f.base + Unknowns.HEADING;
        slope[4] = byX * ViewFrame.dot(d, f.rightByHeading)
                + byY * ViewFrame.dot(d, f.downByHeading)
                + byZ * ViewFrame.dot(d, f.forwardByHeading);
        index[5] = f.base + Unknowns.PITCH;
        slope[5] = byX * ViewFrame.dot(d, f.rightByPitch)
                + byY * ViewFrame.dot(d, f.downByPitch)
                + byZ * ViewFrame.dot(d, f.forwardByPitch);
        index[6] = f.base + Unknowns.ROLL;
        slope[6] = (byX * y - byY * x) * z;
        index[10] = ball + Unknowns.BALL_DIAMETER;
        slope[10] = seen / diameter * (1 + diameter * diameter / (4 * root2)) + slope[9] / 2;
        sink.row(seen - diameterPx / sigmaPx, 11, index, slope);
    }
}
