package org.toeline.flight.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.continuous.TDistribution;
import org.jspecify.annotations.Nullable;
import org.toeline.flight.Shot;
import org.toeline.flight.ShotFigure;

/**
 * Two setups by the shots hit from them: each figure's difference, with an interval and in words.
 *
 * <p>An interval is what shuffling the shots between the setups allows ({@link Shuffled}), in units of a standard error that
 * knows of unequal spreads and of shots that are like the one before ({@link Likeness}). Intervals are each figure's own;
 * <em>real</em> allows for all figures that are looked at together, by the largest of them in each shuffle, and by Holm's
 * method on usual calibrated intervals ({@link Calibration}; Holm 1979, Scand. J. Stat. 6:65), whichever is stricter. Very
 * many shots are not shuffled. How often that is wrong, and
 * how often a true change is found, is in {@code docs/flight.md}.
 */
public record SetupComparison(List<Difference> differences, List<SpreadDifference> spreads, List<SharesOfSides> sides) {

    /** Among many figures chance reaches farther than a usual interval is calibrated for; found by simulation. */
    private static final double OF_MANY = 1.15;

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
        if (enough.isEmpty()) {
            return Map.of();
        }
        return order.shots().size() > Shuffled.MANY
                ? ofMany(enough)
                : ofFew(enough, places, order.shots().size());
    }

    private static Map<ShotFigure, Found> ofFew(
            Map<ShotFigure, OrderedFigures> enough, Map<ShotFigure, int[]> places, int shots) {
        List<ShotFigure> looked = List.copyOf(enough.keySet());
        Shuffled shuffled = Shuffled.of(
                List.copyOf(enough.values()),
                looked.stream().map(f -> Objects.requireNonNull(places.get(f))).toList(),
                shots);
        Map<ShotFigure, OrderedFigures.Studentized> all = studentized(enough);
        // far out, where one of many figures must lie, unequal spreads reach farther than shuffles do
        Set<ShotFigure> holding = looked.size() > 1 ? holding(all, f -> OF_MANY) : Set.copyOf(looked);
        Map<ShotFigure, Found> found = new EnumMap<>(ShotFigure.class);
        for (int f = 0; f < looked.size(); f++) {
            ShotFigure figure = looked.get(f);
            OrderedFigures.Studentized s = Objects.requireNonNull(all.get(figure));
            double half = shuffled.widening()[f] * s.error() * shuffled.quantile(f);
            boolean real =
                    shuffled.familyP(f) <= Holm.CHANCE && holding.contains(figure) && half < Math.abs(s.difference());
            found.put(figure, new Found(s, estimate(s, half, shuffled.p(f)), real));
        }
        return found;
    }

    /** So many shots that Student's t and the likeness found in them hold as they are. */
    private static Map<ShotFigure, Found> ofMany(Map<ShotFigure, OrderedFigures> enough) {
        Map<ShotFigure, OrderedFigures.Studentized> all = studentized(enough);
        Map<ShotFigure, Double> widening = new EnumMap<>(ShotFigure.class);
        all.forEach((figure, s) -> widening.put(figure, usualWidening(Objects.requireNonNull(enough.get(figure)), s)));
        Set<ShotFigure> holding = holding(all, f -> Objects.requireNonNull(widening.get(f)));
        Map<ShotFigure, Found> found = new EnumMap<>(ShotFigure.class);
        all.forEach((figure, s) -> {
            double wide = Objects.requireNonNull(widening.get(figure));
            Estimate estimate = estimate(s, wide * s.usualError() * s.usual(), s.usualP(wide));
            found.put(figure, new Found(s, estimate, holding.contains(figure)));
        });
        return found;
    }

    private static Map<ShotFigure, OrderedFigures.Studentized> studentized(Map<ShotFigure, OrderedFigures> enough) {
        Map<ShotFigure, OrderedFigures.Studentized> all = new EnumMap<>(ShotFigure.class);
        enough.forEach((figure, values) -> all.put(figure, values.studentized()));
        return all;
    }

    private static Set<ShotFigure> holding(
            Map<ShotFigure, OrderedFigures.Studentized> all, ToDoubleFunction<ShotFigure> widening) {
        Map<ShotFigure, Double> chances = new EnumMap<>(ShotFigure.class);
        all.forEach((figure, s) -> chances.put(figure, s.usualP(widening.applyAsDouble(figure))));
        return Holm.holding(chances);
    }

    private static double usualWidening(OrderedFigures figures, OrderedFigures.Studentized s) {
        return Math.max(1, Likeness.widening(figures.neighbours(), s.before(), s.after(), s.likeness()));
    }

    private static Estimate estimate(OrderedFigures.Studentized s, double half, double p) {
        return new Estimate(
                s.difference(),
                s.difference() - half,
                s.difference() + half,
                p,
                s.before().apart() + s.after().apart());
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
                centre.value(),
                centre.variance() * share,
                centre.guarded() * share,
                centre.freedom() + 0.7 * more,
                centre.count() + more,
                0);
    }
}
