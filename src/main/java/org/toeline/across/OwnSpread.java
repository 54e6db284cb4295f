package org.toeline.across;

import java.util.List;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.toeline.geometry.Finite;
import org.toeline.reading.Measured;

/**
 * How much a player varies from one address to the next, apart from how well each is measured.
 *
 * @param standardDeviation s, in the unit of the figures, 0 or more
 * @param plausibly         what s is below with 80 % confidence, {@code standardDeviation} or more
 * @param degreesOfFreedom  how many independent differences it was learnt from; 0 when it is not known, and then
 *                          {@code standardDeviation} is 0 and changes are between two addresses, not two habits
 */
public record OwnSpread(double standardDeviation, double plausibly, int degreesOfFreedom) {

    /** Nothing is known: each setup was addressed once or twice. */
    public static final OwnSpread UNKNOWN = new OwnSpread(0, 0, 0);

    /** Fewer degrees of freedom than these tell next to nothing of a spread. */
    public static final int LEAST_FREEDOM = 3;

    /** Two-sided 95 % of the normal distribution. */
    static final double SURE = 1.96;

    private static final double UNLIKELY = 0.2;

    public OwnSpread {
        Finite.require(standardDeviation, "standardDeviation");
        Finite.require(plausibly, "plausibly");
        if (standardDeviation < 0
                || plausibly < standardDeviation
                || degreesOfFreedom < 0
                || degreesOfFreedom == 0 && plausibly != 0) {
            throw new IllegalArgumentException(
                    "a spread of " + standardDeviation + ", at most " + plausibly + ", from " + degreesOfFreedom
                            + " degrees of freedom; none may be negative, and what was learnt from nothing is 0");
        }
    }

    public boolean isKnown() {
        return degreesOfFreedom > 0;
    }

    /**
     * From repeated addresses: each group holds one setup addressed several times. The pooled variance within the groups
     * is that of the player plus that of measuring; the mean of u² is taken off (the variance components of a one-way
     * analysis of variance with known measuring variance), and what falls below zero is zero. {@link #UNKNOWN} with fewer
     * than {@link #LEAST_FREEDOM} degrees of freedom.
     */
    public static OwnSpread ofRepeats(List<List<Measured>> groups) {
        double squares = 0;
        double measuring = 0;
        int freedom = 0;
        for (List<Measured> group : groups) {
            if (group.size() < 2) {
                continue;
            }
            double mean = group.stream().mapToDouble(Measured::value).average().orElseThrow();
            double meanVariance = group.stream()
                    .mapToDouble(m -> square(m.standardUncertainty()))
                    .average()
                    .orElseThrow();
            squares += group.stream().mapToDouble(m -> square(m.value() - mean)).sum();
            measuring += meanVariance * (group.size() - 1);
            freedom += group.size() - 1;
        }
        if (freedom < LEAST_FREEDOM) {
            return UNKNOWN;
        }
        double chiSquare = new GammaDistribution(freedom / 2.0, 2).inverseCumulativeProbability(UNLIKELY);
        double upTo = Math.max(squares / chiSquare, squares / freedom) - measuring / freedom;
        return new OwnSpread(
                Math.sqrt(Math.max(0, (squares - measuring) / freedom)), Math.sqrt(Math.max(0, upTo)), freedom);
    }

    private static double square(double x) {
        return x * x;
    }
}
