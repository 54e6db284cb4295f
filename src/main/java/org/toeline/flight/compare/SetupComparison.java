package org.toeline.flight.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hipparchus.distribution.continuous.TDistribution;
import org.jspecify.annotations.Nullable;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/**
 * Two setups by the shots hit from them: each figure's difference, with an interval and in words.
 *
 * <p>An interval is the wider of two: the usual calibrated one ({@link Calibration}) and what shuffling the shots between the
 * setups allows ({@link Shuffled}); both are in units of a standard error that knows of unequal spreads, and both are widened
 * for shots that are like the one before ({@link Likeness}). Intervals are each figure's own; <em>real</em> allows for all figures that are
 * looked at together, by the largest of them in each shuffle and by Holm's method (Holm 1979, Scand. J. Stat. 6:65), whichever
 * is stricter. How often that is wrong, and how often a true change is found, is in {@code docs/flight.md}.
 */
public record SetupComparison(List<Difference> differences, List<SpreadDifference> spreads, List<SharesOfSides> sides) {

    /** Among many figures chance reaches farther, where a likeness taken for too little counts more; found by simulation. */
    private static final double OF_MANY = 1.1;

    public SetupComparison {
        differences = List.copyOf(differences);
        spreads = List.copyOf(spreads);
        sides = List.copyOf(sides);
    }

    /** All shots of the first setup were hit before all of the second. */
    public static SetupComparison of(List<Shot> before, List<Shot> after) {
        return of(HitOrder.oneAfterTheOther(before, after));
    }

    /** Compares all figures that shots of both setups have, in the order of {@link ShotFigure}. */
    public static SetupComparison of(HitOrder order) {
        Map<ShotFigure, int[]> places = new EnumMap<>(ShotFigure.class);
        Map<ShotFigure, OrderedFigures> enough = new EnumMap<>(ShotFigure.class);
        boolean[] second = order.seconds();
        for (ShotFigure figure : ShotFigure.values()) {
            int[] at = java.util.stream.IntStream.range(0, second.length)
                    .filter(i -> order.shots().get(i).figure(figure).isPresent())
                    .toArray();
            OrderedFigures figures = figures(order.shots(), at, second, figure);
            if (figures.count(false) > 0 && figures.count(true) > 0) {
                places.put(figure, at);
                if (Math.min(figures.count(false), figures.count(true)) >= Centre.LEAST && varies(figures)) {
                    enough.put(figure, figures);
                }
            }
        }
        Worth worth = Worth.of(order.shots());
        Map<ShotFigure, Found> found = found(order, enough, places);
        List<Difference> differences = new ArrayList<>();
        places.forEach((figure, at) -> {
            OrderedFigures figures = figures(order.shots(), at, second, figure);
            differences.add(
                    difference(figure, figures.count(false), figures.count(true), found.get(figure), worth.of(figure)));
        });
        return new SetupComparison(
                differences, SpreadDifference.of(order), SharesOfSides.of(order.of(false), order.of(true)));
    }

    private record Found(OrderedFigures.Studentized studentized, Estimate estimate, boolean real) {}

    private static OrderedFigures figures(List<Shot> shots, int[] at, boolean[] second, ShotFigure figure) {
        double[] values = Arrays.stream(at)
                .mapToDouble(i -> shots.get(i).figure(figure).orElseThrow())
                .toArray();
        boolean[] setup = new boolean[at.length];
        for (int i = 0; i < at.length; i++) {
            setup[i] = second[at[i]];
        }
        return new OrderedFigures(values, setup);
    }

    private static boolean varies(OrderedFigures figures) {
        return figures.spreads();
    }

    private static Map<ShotFigure, Found> found(
            HitOrder order, Map<ShotFigure, OrderedFigures> enough, Map<ShotFigure, int[]> places) {
        List<ShotFigure> looked = List.copyOf(enough.keySet());
        int shots = order.shots().size();
        @Nullable
        Shuffled shuffled = shots > Shuffled.MANY || looked.isEmpty()
                ? null
                : Shuffled.of(
                        List.copyOf(enough.values()),
                        looked.stream()
                                .map(f -> Objects.requireNonNull(places.get(f)))
                                .toList(),
                        shots);
        Map<ShotFigure, OrderedFigures.Studentized> all = new EnumMap<>(ShotFigure.class);
        Map<ShotFigure, Double> usual = new EnumMap<>(ShotFigure.class);
        enough.forEach((figure, values) -> {
            OrderedFigures.Studentized s = values.studentized();
            all.put(figure, s);
            usual.put(figure, s.usualP());
        });
        var holding = Holm.holding(usual);
        double together = together(order, all);
        Map<ShotFigure, Found> found = new EnumMap<>(ShotFigure.class);
        for (int f = 0; f < looked.size(); f++) {
            ShotFigure figure = looked.get(f);
            OrderedFigures.Studentized s = Objects.requireNonNull(all.get(figure));
            double wide = s.widening();
            double wider = Math.max(wide, together);
            double half = wide * s.error() * Math.max(s.usual(), shuffled == null ? 0 : shuffled.quantile(f));
            double p = Math.max(s.usualP(), shuffled == null ? 0 : shuffled.p(f, wide));
            boolean real = holding.contains(figure)
                    && (shuffled == null || shuffled.familyP(f, wider) <= Holm.CHANCE)
                    && half < Math.abs(s.difference());
            int apart = s.before().apart() + s.after().apart();
            Estimate estimate = new Estimate(s.difference(), s.difference() - half, s.difference() + half, p, apart);
            found.put(figure, new Found(s, estimate, real));
        }
        return found;
    }

    /** Of many figures the one whose likeness is taken for least would be called real most: none is taken for less than all. */
    private static double together(HitOrder order, Map<ShotFigure, OrderedFigures.Studentized> all) {
        if (all.size() < 2) {
            return 1;
        }
        double mean = all.values().stream()
                .mapToDouble(OrderedFigures.Studentized::widening)
                .average()
                .orElseThrow();
        return Math.min(Likeness.allowed(order.seconds()), OF_MANY * mean);
    }

    private static Difference difference(
            ShotFigure figure, int before, int after, @Nullable Found found, double worth) {
        if (found == null) {
            int missing = Math.max(1, Centre.LEAST - Math.min(before, after));
            return new Difference(figure, before, after, State.TOO_FEW, null, missing, worth);
        }
        Estimate e = found.estimate;
        if (found.real || Math.max(Math.abs(e.low()), Math.abs(e.high())) <= worth) {
            return new Difference(figure, before, after, found.real ? State.REAL : State.NOT_SHOWN, e, 0, worth);
        }
        // either the interval shrinks away from zero, or to within what is worth acting on
        double aim = Math.max(Math.abs(e.difference()), worth - Math.abs(e.difference()));
        int more = more(found.studentized.before(), found.studentized.after(), e.halfWidth(), aim);
        return new Difference(figure, before, after, State.TOO_FEW, e, more, worth);
    }

    /** So many more shots with each setup, spread like those so far, until the half width is down to an aim. */
    static int more(Centre before, Centre after, double halfWidth, double aim) {
        double now = half(before, after);
        for (int more = 1; more <= Difference.MOST_MORE; more++) {
            if (half(grown(before, more), grown(after, more)) * halfWidth / now <= aim) {
                return more;
            }
        }
        return Difference.MOST_MORE + 1;
    }

    private static double half(Centre before, Centre after) {
        Welch welch = Welch.of(before, after);
        return new TDistribution(welch.freedom()).inverseCumulativeProbability(0.5 + Estimate.CONFIDENCE / 2)
                * welch.standardError()
                * Calibration.factor(before.count(), after.count(), welch.share());
    }

    private static Centre grown(Centre centre, int more) {
        double share = (double) centre.count() / (centre.count() + more);
        return new Centre(
                centre.value(), centre.variance() * share, centre.freedom() + 0.7 * more, centre.count() + more, 0);
    }
}
