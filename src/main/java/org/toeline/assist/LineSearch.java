package org.toeline.assist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.toeline.assist.StraightLine.Fit;
import org.toeline.assist.StraightLine.Place;

/**
 * Looks along a rough line for a straight edge or a thin bar. The line is cut into pieces; in the mean profile across
 * each, steps of colour are found, and pairs of opposite steps are bars. The line that most pieces agree on is fitted.
 */
final class LineSearch {

    /** What a line runs along. */
    enum Kind {
        EDGE,
        BAR
    }

    /** @param width of a bar; 0 for an edge */
    private record Feature(double s, double t, double width, Steps.Step step, double worth) {}

    /**
     * @param line  its s axis is the line found
     * @param fit   in the coordinates of {@code line}: offset and slope about zero
     * @param width mean width of a bar, pixels; 0 for an edge
     * @param share of the pieces, how many agree
     */
    record Found(Kind kind, StraightLine line, Fit fit, double width, double share) {}

    private static final double LEAST_STEP_PER_PX = 9;
    private static final double TOLERANCE_PX = 0.9;
    private static final double LEAST_SHARE = 0.6;
    private static final double LEAST_LIKENESS = 0.6;
    private static final double LEAST_BAR_PX = 1.0;
    private static final int MOST_PIECES = 24;

    private final Colours colours;
    private final double widestBarPx;

    LineSearch(Colours colours, double widestBarPx) {
        this.colours = colours;
        this.widestBarPx = widestBarPx;
    }

    /**
     * @param reach how far off the rough line it may lie, pixels
     * @param turn  by how much it may be turned from it, radians
     */
    Optional<Found> find(Kind kind, StraightLine rough, double fromS, double toS, double reach, double turn) {
        Optional<Found> found = once(kind, rough, fromS, toS, reach, turn);
        for (int round = 0; round < 2 && found.isPresent(); round++) {
            Found f = found.get();
            found = once(kind, f.line, fromS, toS, 1.5, 0.05);
        }
        return found;
    }

    private Optional<Found> once(Kind kind, StraightLine rough, double fromS, double toS, double reach, double turn) {
        List<List<Feature>> pieces = pieces(kind, rough, fromS, toS, reach);
        List<Feature> best = List.of();
        double most = 0;
        for (int i = 0; i < pieces.size(); i++) {
            for (int k = pieces.size() - 1; k > i + pieces.size() / 4; k--) {
                for (Feature a : pieces.get(i)) {
                    for (Feature b : pieces.get(k)) {
                        double slope = (b.t - a.t) / (b.s - a.s);
                        if (Math.abs(slope) > turn || !alike(a, b)) {
                            continue;
                        }
                        List<Feature> on = on(pieces, a, slope);
                        double middle = a.t + slope * ((fromS + toS) / 2 - a.s);
                        double score = worth(on, a, slope) * Math.exp(-middle * middle / (reach * reach));
                        if (on.size() >= LEAST_SHARE * pieces.size() && score > most) {
                            most = score;
                            best = on;
                        }
                    }
                }
            }
        }
        return best.size() < 4 ? Optional.empty() : Optional.of(laid(kind, rough, best, pieces.size()));
    }

    private static Found laid(Kind kind, StraightLine rough, List<Feature> on, int pieces) {
        List<Place> places =
                new ArrayList<>(on.stream().map(f -> new Place(f.s, f.t)).toList());
        Fit fit = StraightLine.fit(places);
        for (int round = 0; round < 2; round++) {
            Fit last = fit;
            double limit = Math.max(0.15, 2.5 * fit.scatter());
            List<Place> kept = places.stream()
                    .filter(p -> Math.abs(p.t() - last.t(p.s())) <= limit)
                    .toList();
            if (kept.size() >= 0.6 * places.size() && kept.size() >= 4) {
                fit = StraightLine.fit(kept);
            }
        }
        Fit own = new Fit(0, 0, fit.scatter(), fit.middle(), fit.squares(), fit.places());
        double width = on.stream()
                .mapToDouble(Feature::width)
                .sorted()
                .skip(on.size() / 2)
                .findFirst()
                .orElse(0);
        return new Found(kind, rough.onto(fit), own, width, (double) on.size() / pieces);
    }

    private static boolean alike(Feature a, Feature b) {
        return a.step.likeness(b.step) > LEAST_LIKENESS
                && Math.abs(a.width - b.width) < 0.8 + 0.25 * Math.min(a.width, b.width);
    }

    /** In each piece the feature nearest to a line, where one is near and like the first. */
    private static List<Feature> on(List<List<Feature>> pieces, Feature first, double slope) {
        List<Feature> on = new ArrayList<>();
        for (List<Feature> piece : pieces) {
            Feature nearest = null;
            double least = TOLERANCE_PX;
            for (Feature f : piece) {
                double off = Math.abs(f.t - first.t - slope * (f.s - first.s));
                if (off < least && alike(first, f)) {
                    least = off;
                    nearest = f;
                }
            }
            if (nearest != null) {
                on.add(nearest);
            }
        }
        return on;
    }

    private static double worth(List<Feature> on, Feature first, double slope) {
        double sum = 0;
        for (Feature f : on) {
            double off = (f.t - first.t - slope * (f.s - first.s)) / TOLERANCE_PX;
            sum += f.worth * (1 - off * off);
        }
        return sum;
    }

    private List<List<Feature>> pieces(Kind kind, StraightLine line, double fromS, double toS, double reach) {
        Strip strip = new Strip(colours, line);
        double length = Math.max(3, (toS - fromS) / MOST_PIECES);
        int n = Math.max(4, (int) ((toS - fromS) / length));
        length = (toS - fromS) / n;
        List<List<Feature>> pieces = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            double from = fromS + k * length;
            double side = kind == Kind.BAR ? reach + widestBarPx + 4 : reach + 4;
            double[][] profile = strip.across(from, from + Math.min(length, 12), side);
            List<Steps.Step> steps = Steps.of(profile, LEAST_STEP_PER_PX);
            double s = from + Math.min(length, 12) / 2;
            pieces.add(kind == Kind.BAR ? bars(profile, steps, s, reach) : edges(steps, s, reach));
        }
        return pieces;
    }

    private static List<Feature> edges(List<Steps.Step> steps, double s, double reach) {
        return steps.stream()
                .filter(e -> Math.abs(e.t()) <= reach)
                .map(e -> new Feature(s, e.t(), 0, e, Math.min(1, e.strength() / 40) + 0.5))
                .toList();
    }

    private List<Feature> bars(double[][] profile, List<Steps.Step> steps, double s, double reach) {
        List<Feature> bars = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            for (int k = i + 1; k < steps.size(); k++) {
                Steps.Step a = steps.get(i);
                Steps.Step b = steps.get(k);
                double width = b.t() - a.t();
                double middle = (a.t() + b.t()) / 2;
                double weaker = Math.min(a.strength(), b.strength()) / Math.max(a.strength(), b.strength());
                if (width >= LEAST_BAR_PX
                        && width <= widestBarPx
                        && Math.abs(middle) <= reach
                        && a.likeness(b) < -LEAST_LIKENESS
                        && weaker > 0.3) {
                    bars.add(new Feature(s, middle, width, a, sides(profile, a, b) + 0.5));
                }
            }
        }
        return bars;
    }

    /** 1 where the ground is the same on both sides of a bar, 0 where it differs as much as the bar does from it. */
    private static double sides(double[][] profile, Steps.Step a, Steps.Step b) {
        double[] left = colour(profile, a.t() - 1.75);
        double[] right = colour(profile, b.t() + 1.75);
        double[] inside = colour(profile, (a.t() + b.t()) / 2);
        double apart = distance(left, right);
        double over = Math.max(1, (distance(left, inside) + distance(right, inside)) / 2);
        return Math.max(0, 1 - apart / over);
    }

    private static double[] colour(double[][] profile, double t) {
        int i = (int) Math.round(t / Strip.STEP_PX + (profile.length - 1) / 2.0);
        return profile[Math.max(0, Math.min(profile.length - 1, i))];
    }

    static double distance(double[] a, double[] b) {
        return Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
    }
}
