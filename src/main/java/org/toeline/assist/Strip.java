package org.toeline.assist;

import org.toeline.geometry.ImagePoint;

/**
 * Colours laid out along a line: s runs along it, t across it, to the right of its direction on a picture
 * whose y runs down. Pixels throughout.
 */
final class Strip {

    /** Distance between the samples across the line, pixels. */
    static final double STEP_PX = 0.25;

    private final Colours colours;
    private final StraightLine line;

    Strip(Colours colours, StraightLine line) {
        this.colours = colours;
        this.line = line;
    }

    /** The mean colour over a stretch of the line, at each t from −reach to +reach. */
    double[][] across(double fromS, double toS, double reachPx) {
        int half = (int) Math.round(reachPx / STEP_PX);
        double[][] mean = new double[2 * half + 1][3];
        int n = Math.max(1, (int) Math.round(toS - fromS));
        for (int k = 0; k < n; k++) {
            double s = fromS + (k + 0.5) * (toS - fromS) / n;
            for (int i = 0; i < mean.length; i++) {
                add(mean[i], s, (i - half) * STEP_PX, 1.0 / n);
            }
        }
        return mean;
    }

    /** The mean colour at one place along the line, over a stretch across it. */
    double[] at(double s, double fromT, double toT) {
        double[] mean = new double[3];
        int n = Math.max(1, (int) Math.ceil((toT - fromT) / 0.5));
        for (int k = 0; k < n; k++) {
            add(mean, s, fromT + (k + 0.5) * (toT - fromT) / n, 1.0 / n);
        }
        return mean;
    }

    private void add(double[] sum, double s, double t, double weight) {
        ImagePoint p = line.at(s, t);
        int x = (int) Math.floor(p.xPx() - 0.5);
        int y = (int) Math.floor(p.yPx() - 0.5);
        double fx = p.xPx() - 0.5 - x;
        double fy = p.yPx() - 0.5 - y;
        colours.add(sum, x, y, weight * (1 - fx) * (1 - fy));
        colours.add(sum, x + 1, y, weight * fx * (1 - fy));
        colours.add(sum, x, y + 1, weight * (1 - fx) * fy);
        colours.add(sum, x + 1, y + 1, weight * fx * fy);
    }
}
