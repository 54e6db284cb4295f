package org.toeline.study;

/** What became of one reading over many scenes. */
final class Tally {

    /** Half a normal distribution's 95 % interval over its standard deviation. */
    private static final double NORMAL_95 = 1.959964;

    private int count;
    private int covered;
    private double squaredErrors;
    private double boundVariances;
    private double error;
    private double widths;
    private double squaresOverStated;

    void add(double value, double low, double high, double truth, double bound) {
        count++;
        double stated = (high - low) / 2 / NORMAL_95;
        squaresOverStated += (value - truth) * (value - truth) / (stated * stated);
        if (low <= truth && truth <= high) {
            covered++;
        }
        squaredErrors += (value - truth) * (value - truth);
        error += value - truth;
        boundVariances += bound * bound;
        widths += high - low;
    }

    int count() {
        return count;
    }

    double rms() {
        return Math.sqrt(squaredErrors / count);
    }

    double bias() {
        return error / count;
    }

    /** Root mean square error over the root mean Cramér–Rao variance. */
    double overBound() {
        return rms() / Math.sqrt(boundVariances / count);
    }

    double coverage() {
        return (double) covered / count;
    }

    /** Mean of the squared errors, each over the variance that its interval states: 1 where intervals are as wide as needed. */
    double meanSquareOverStated() {
        return squaresOverStated / count;
    }

    double meanWidth() {
        return widths / count;
    }
}
