package org.toeline.flight.compare;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hipparchus.distribution.continuous.TDistribution;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/**
 * Two setups by the shots hit from them: each figure's difference, with an interval and in words.
 *
 * <p>What is assumed: the shots of a setup vary about a middle as chance has it, each by itself, and up to about one in
 * ten is a mishit that says nothing of the setup. With three to five shots a mishit cannot be told from the others. The
 * intervals are each figure's own; that several figures are looked at is allowed for in calling one <em>real</em>, by
 * Holm's method (Holm 1979, Scand. J. Stat. 6:65), so that of all figures together a false one is called real in at most
 * one comparison of twenty.
 */
public record SetupComparison(List<Difference> differences) {

    public SetupComparison {
        differences = List.copyOf(differences);
    }

    /** Compares all figures that shots of both setups have, in the order of {@link ShotFigure}. */
    public static SetupComparison of(List<Shot> before, List<Shot> after) {
        Map<ShotFigure, Centre[]> centres = new EnumMap<>(ShotFigure.class);
        Map<ShotFigure, Estimate> estimates = new EnumMap<>(ShotFigure.class);
        Map<ShotFigure, int[]> counts = new EnumMap<>(ShotFigure.class);
        for (ShotFigure figure : ShotFigure.values()) {
            double[] first = figures(before, figure);
            double[] second = figures(after, figure);
            if (first.length > 0 && second.length > 0) {
                counts.put(figure, new int[] {first.length, second.length});
                if (Math.min(first.length, second.length) >= Centre.LEAST) {
                    Centre[] both = {Centre.of(first), Centre.of(second)};
                    centres.put(figure, both);
                    if (both[0].variance() + both[1].variance() > 0) {
                        estimates.put(figure, Estimate.of(both[0], both[1]));
                    }
                }
            }
        }
        Map<ShotFigure, Double> p = new EnumMap<>(ShotFigure.class);
        estimates.forEach((figure, estimate) -> p.put(figure, estimate.p()));
        Set<ShotFigure> real = Holm.holding(p);
        List<Difference> differences = new ArrayList<>();
        counts.forEach((figure, n) -> differences.add(
                difference(figure, n, estimates.get(figure), centres.get(figure), real.contains(figure))));
        return new SetupComparison(differences);
    }

    private static double[] figures(List<Shot> shots, ShotFigure figure) {
        return shots.stream().flatMapToDouble(s -> s.figure(figure).stream()).toArray();
    }

    private static Difference difference(
            ShotFigure figure,
            int[] counts,
            @org.jspecify.annotations.Nullable Estimate estimate,
            Centre @org.jspecify.annotations.Nullable [] centres,
            boolean real) {
        if (estimate == null || centres == null) {
            int missing = Math.max(1, Centre.LEAST - Math.min(counts[0], counts[1]));
            return new Difference(figure, counts[0], counts[1], State.TOO_FEW, null, missing);
        }
        if (real || estimate.halfWidth() <= figure.worthwhile()) {
            return new Difference(figure, counts[0], counts[1], real ? State.REAL : State.NOT_SHOWN, estimate, 0);
        }
        return new Difference(
                figure,
                counts[0],
                counts[1],
                State.TOO_FEW,
                estimate,
                more(centres[0], centres[1], figure.worthwhile()));
    }

    /** So many more shots with each setup, spread like those so far, until the half width is down to an aim. */
    static int more(Centre before, Centre after, double halfWidth) {
        for (int more = 1; more <= Difference.MOST_MORE; more++) {
            Centre first = grown(before, more);
            Centre second = grown(after, more);
            Welch welch = Welch.of(first, second);
            double half = new TDistribution(welch.freedom()).inverseCumulativeProbability(0.5 + Estimate.CONFIDENCE / 2)
                    * welch.standardError()
                    * Calibration.factor(first.count(), second.count(), welch.share());
            if (half <= halfWidth) {
                return more;
            }
        }
        return Difference.MOST_MORE + 1;
    }

    private static Centre grown(Centre centre, int more) {
        double share = (double) centre.count() / (centre.count() + more);
        return new Centre(
                centre.value(), centre.variance() * share, centre.freedom() + 0.7 * more, centre.count() + more, 0);
    }
}
