package org.toeline.study;

/** What became of one reading over many scenes. */
final class Tally {

    private int count;
    private int covered;
    private double squaredErrors;
    private double boundVariances;
    private double error;
    private double widths;

    void add(double value, double low, double high, double truth, double bound) {
        count++;
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

    double meanWidth() {
        return widths / count;
    }
}
