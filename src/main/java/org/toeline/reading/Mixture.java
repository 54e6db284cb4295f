package org.toeline.reading;

import java.util.List;
import org.toeline.geometry.Finite;

/**
 * Several hypotheses, each a normal distribution with its probability: where a mark is in doubt, what the quantity is if
 * the mark is right and what it is if the mark is wrong. It may have several humps and need not be symmetric.
 *
 * @param parts at least one; their weights add up to 1
 */
public record Mixture(List<Part> parts) implements Spread {

    private static final int HALVINGS = 60;
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

    /** By halving, between the least and the greatest of the parts' own quantiles. */
    @Override
    public double quantile(double p) {
        double low = parts.stream().mapToDouble(q -> q.normal.quantile(p)).min().orElseThrow();
        double high =
                parts.stream().mapToDouble(q -> q.normal.quantile(p)).max().orElseThrow();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (probabilityBelow(middle) < p) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    @Override
    public double probabilityBelow(double x) {
        return parts.stream()
                .mapToDouble(p -> p.weight * p.normal.probabilityBelow(x))
                .sum();
    }
}
