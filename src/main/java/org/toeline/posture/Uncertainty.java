package org.toeline.posture;

import java.util.Map;

/**
 * The joint uncertainty of a {@link Coordinates} vector: a covariance, and where each share of it comes from.
 */
public interface Uncertainty {

    /** The variance of a function of the coordinates whose gradient is given (law of propagation, JCGM 100 5.2.2). */
    double variance(double[] gradient);

    /** The parts of {@link #variance} by source; they add up to it. */
    Map<Source, Double> shares(double[] gradient);
}
