package org.toeline.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.analysis.differentiation.Gradient;
import org.toeline.posture.Coordinates;
import org.toeline.posture.Posture;
import org.toeline.posture.Source;
import org.toeline.posture.Uncertainty;

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
        Gradient value = kind.of(new GradientBody(posture.coordinates()));
        double[] gradient = value.getGradient();
        Uncertainty uncertainty = posture.uncertainty();
        double ofMarks = uncertainty.variance(gradient);
        double variance = ofMarks + kind.ownSigma() * kind.ownSigma();
        double sigma = Math.sqrt(variance);
        if (!Double.isFinite(value.getValue()) || !(sigma > 0) || !Double.isFinite(sigma)) {
            return Optional.empty();
        }
        return Optional.of(new Reading(
                kind,
                value.getValue(),
                new Normal(value.getValue(), sigma),
                dominant(uncertainty.shares(gradient), ofMarks / variance)));
    }

    /** A reading's value at given coordinates, without its uncertainty: for propagating draws. Inside units. */
    public static double value(ReadingKind kind, Coordinates coordinates) {
        return kind.of(new PlainBody(coordinates)).getReal();
    }

    private static boolean supported(ReadingKind kind, Posture posture) {
        return (!kind.needsBall() || posture.hasBall())
                && kind.landmarks().stream().allMatch(posture::has);
    }

    /** @param ofMarks the part of the variance that the shares are of; the rest is what bodies differ by */
    private static Source dominant(Map<Source, Double> shares, double ofMarks) {
        Map<Source, Double> all = new EnumMap<>(Source.class);
        shares.forEach((source, share) -> all.put(source, share * ofMarks));
        all.merge(Source.BODY, 1 - ofMarks, Double::sum);
        return all.entrySet().stream()
                .max(Comparator.comparingDouble(Map.Entry::getValue))
                .map(Map.Entry::getKey)
                .orElse(Source.MARKS);
    }
}
