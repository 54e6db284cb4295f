package org.toeline.reading;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.toeline.geometry.Finite;

/** The normal distribution: where the views tell enough for the posterior to be one. */
public record Normal(double mean, double standardUncertainty) implements Spread {

    public Normal {
        Finite.require(mean, "mean");
        Finite.requirePositive(standardUncertainty, "standardUncertainty");
    }

    @Override
    public double quantile(double p) {
        return new NormalDistribution(mean, standardUncertainty).inverseCumulativeProbability(p);
    }

    @Override
    public double probabilityBelow(double x) {
        return new NormalDistribution(mean, standardUncertainty).cumulativeProbability(x);
    }
}
