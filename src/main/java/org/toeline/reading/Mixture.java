package org.toeline.reading;

import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.toeline.geometry.Finite;

/**
 * Several hypotheses, each a normal distribution with its probability: where a mark is in doubt, what the quantity is if
 * the mark is right and what it is if the mark is wrong. It may have several humps and need not be symmetric.
 *
 * @param parts at least one; their weights add up to 1
 */
public record Mixture(List<Part> parts) implements Spread {

    /** So near a quantile is found, in standard uncertainties. */
    private static final double EXACT = 1e-9;

    private static final int ORDER = 5;
    private static final int MOST_LOOKS = 200;
    private static final double SUM_TOLERANCE = 1e-9;

    /** @param weight the hypothesis's probability, in (0, 1] */
    public record Part(double weight, Normal normal) {

        public Part {
            Finite.requirePositive(weight, "weight");
        }
    }

    public Mixture {
        parts = List.copyOf(parts);
        double sum = parts.stream().mapToDouble(Part::weight).sum();
        if (!(Math.abs(sum - 1) < SUM_TOLERANCE)) {
            throw new IllegalArgumentException("weights add up to " + sum + "; 1 is allowed");
        }
    }

    public double mean() {
        return parts.stream().mapToDouble(p -> p.weight * p.normal.mean()).sum();
    }

    /** Between the parts and within them: the law of total variance. */
    @Override
    public double standardUncertainty() {
        double mean = mean();
        double sum = 0;
        for (Part p : parts) {
            double within = p.normal.standardUncertainty();
            double between = p.normal.mean() - mean;
            sum += p.weight * (within * within + between * between);
        }
        return Math.sqrt(sum);
    }

    /** Where the distribution function is p, between the least and the greatest of the parts' own quantiles (Brent 1973). */
    @Override
    public double quantile(double p) {
        double[] own =
                parts.stream().mapToDouble(q -> q.normal.quantile(p)).sorted().toArray();
        double low = own[0];
        double high = own[own.length - 1];
        double exact = EXACT * standardUncertainty();
        // at the ends the function may miss p by a rounding
        if (high - low <= exact || probabilityBelow(low) >= p) {
            return low;
        }
        if (probabilityBelow(high) <= p) {
            return high;
        }
        return new BracketingNthOrderBrentSolver(exact, ORDER)
                .solve(MOST_LOOKS, x -> probabilityBelow(x) - p, low, high);
    }

    @Override
    public double probabilityBelow(double x) {
        return parts.stream()
                .mapToDouble(p -> p.weight * p.normal.probabilityBelow(x))
                .sum();
    }
}
