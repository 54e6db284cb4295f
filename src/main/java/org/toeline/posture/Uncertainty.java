package org.toeline.posture;

import java.util.List;
import java.util.Map;

/**
 * The joint uncertainty of a {@link Coordinates} vector: a covariance, where each share of it comes from, and, where a
 * covariance alone would mislead, equally likely draws of the whole vector.
 */
public interface Uncertainty {

    /** The variance of a function of the coordinates whose gradient is given (law of propagation, JCGM 100 5.2.2). */
    double variance(double[] gradient);

    /** The covariance of two functions of the coordinates, given by their gradients. */
    double covariance(double[] gradientA, double[] gradientB);

    /** The parts of {@link #variance} by source; they add up to it. */
    Map<Source, Double> shares(double[] gradient);

    /** Draws from the posterior, each a whole coordinate vector; empty where the covariance tells all. */
    List<double[]> draws();
}
