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
        double root = Math.sqrt(z * z - diameter * diameter / 4);
        double seen = f.focal * diameter / root * (1 + Math.sqrt(1 + x * x + y * y)) / 2;
        double byZ = -seen * z / (root * root) / sigmaPx;
        index[0] = f.base;
        slope[0] = seen / sigmaPx;
        for (int i = 0; i < 3; i++) {
            index[1 + i] = f.base + 1 + i;
            slope[1 + i] = -byZ * f.forward[i];
            index[6 + i] = ball + i;
            slope[6 + i] = byZ * f.forward[i];
        }
        index[4] = f.base + Unknowns.HEADING;
        slope[4] = byZ * ViewFrame.dot(d, f.forwardByHeading);
        index[5] = f.base + Unknowns.PITCH;
        slope[5] = byZ * ViewFrame.dot(d, f.forwardByPitch);
        index[9] = ball + Unknowns.BALL_DIAMETER;
        slope[9] = seen / diameter * (1 + diameter * diameter / (4 * root * root)) / sigmaPx
                + byZ * f.forward[2] / 2;
        sink.row((seen - diameterPx) / sigmaPx, 10, index, slope);
    }
}
