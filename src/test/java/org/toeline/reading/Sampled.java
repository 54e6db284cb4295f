package org.toeline.reading;

import java.util.Arrays;
import org.toeline.geometry.Finite;

/** A distribution known by equally likely draws, for checks by Monte Carlo. */
public final class Sampled {

    private final double[] sorted;
    private final double standardUncertainty;

    /** @param draws at least two values, in any order, all finite */
    public Sampled(double[] draws) {
        if (draws.length < 2) {
            throw new IllegalArgumentException(draws.length + " draws; at least 2 are needed");
        }
        double sum = 0;
        for (double draw : draws) {
            sum += Finite.require(draw, "draw");
        }
        double mean = sum / draws.length;
        double squares = 0;
        for (double draw : draws) {
            squares += (draw - mean) * (draw - mean);
        }
        this.sorted = draws.clone();
        Arrays.sort(this.sorted);
        this.standardUncertainty = Math.sqrt(squares / (draws.length - 1));
    }

    public double standardUncertainty() {
        return standardUncertainty;
    }

    public double quantile(double p) {
        double at = p * sorted.length - 0.5;
        int below = (int) Math.floor(at);
        if (below < 0) {
            return sorted[0];
        }
        if (below >= sorted.length - 1) {
            return sorted[sorted.length - 1];
        }
        return sorted[below] + (at - below) * (sorted[below + 1] - sorted[below]);
    }

    public double probabilityBelow(double x) {
        int at = Arrays.binarySearch(sorted, x);
        int below = at >= 0 ? at + 1 : -at - 1;
        return (double) below / sorted.length;
    }
}
