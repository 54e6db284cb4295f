package org.toeline.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.analysis.differentiation.Gradient;
import org.toeline.posture.Coordinates;
import org.toeline.posture.Hypothesis;
import org.toeline.posture.Posture;
import org.toeline.posture.Source;

/** The readings that a posture supports, each with its uncertainty. */
public final class Readings {

    private Readings() {}

    /** All readings whose landmarks were marked, in the order of the catalogue. */
    public static List<Reading> of(Posture posture) {
        List<Reading> readings = new ArrayList<>();
        for (ReadingKind kind : ReadingKind.values()) {
            of(kind, posture).ifPresent(readings::add);
        }
        return readings;
    }

    /** One reading; empty when no mark supports it. */
    public static Optional<Reading> of(ReadingKind kind, Posture posture) {
        if (!supported(kind, posture)) {
            return Optional.empty();
        }
        Map<Source, Double> shares = new EnumMap<>(Source.class);
        List<Mixture.Part> parts = new ArrayList<>();
        for (Hypothesis hypothesis : posture.hypotheses()) {
            Gradient value = kind.of(new GradientBody(hypothesis.coordinates()));
            double[] gradient = value.getGradient();
            double own = kind.ownSigma() * kind.ownSigma();
            double sigma = Math.sqrt(hypothesis.uncertainty().variance(gradient) + own);
            if (!Double.isFinite(value.getValue()) || !(sigma > 0) || !Double.isFinite(sigma)) {
                return Optional.empty();
            }
            double probability = hypothesis.probability();
            parts.add(new Mixture.Part(probability, new Normal(value.getValue(), sigma)));
            hypothesis
                    .uncertainty()
                    .shares(gradient)
                    .forEach((source, share) -> shares.merge(source, probability * share, Double::sum));
            shares.merge(Source.BODY, probability * own, Double::sum);
        }
        return Optional.of(reading(kind, parts, shares));
    }

    private static Reading reading(ReadingKind kind, List<Mixture.Part> parts, Map<Source, Double> shares) {
        if (parts.size() == 1) {
            Normal normal = parts.get(0).normal();
            return new Reading(kind, normal.mean(), normal, dominant(shares));
        }
        Mixture mixture = new Mixture(parts);
        double within =
                shares.values().stream().mapToDouble(Double::doubleValue).sum();
        double u = mixture.standardUncertainty();
        shares.merge(Source.MARKS, u * u - within, Double::sum);
        double low = mixture.quantile(0.025);
        double high = mixture.quantile(0.975);
        double held = Math.max(low, Math.min(high, mixture.mean()));
        return new Reading(kind, held, mixture, low, high, dominant(shares));
    }

    /** A reading's value at given coordinates, without its uncertainty: for propagating draws. Inside units. */
    public static double value(ReadingKind kind, Coordinates coordinates) {
        return kind.of(new PlainBody(coordinates)).getReal();
    }

    private static boolean supported(ReadingKind kind, Posture posture) {
        return (!kind.needsBall() || posture.hasBall())
                && kind.landmarks().stream().allMatch(posture::has);
    }

    private static Source dominant(Map<Source, Double> shares) {
        return shares.entrySet().stream()
                .max(Comparator.comparingDouble(Map.Entry::getValue))
                .map(Map.Entry::getKey)
                .orElse(Source.MARKS);
    }
}
