package org.toeline.assist.learn;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.toeline.assist.learn.Correction.Kind;

/**
 * What follows from a coach's corrections of one landmark in one view: by how much later suggestions are moved, and how near they
 * are then. All figures are shares of the player's span.
 *
 * <p><b>The model.</b> A suggestion lies from this coach's mark by d = o + e in each direction: o is what belongs to the coach and is
 * the same every time, e differs from picture to picture. Of other people's marks the sum is known to have the standard deviation s
 * that is stated with suggestions; half of its variance is taken to be the coach's, since nothing else is known of the
 * parts: o ~ N(0, s²/2). The same players come again, and what is off in one picture of a player is likely to be off in the next:
 * {@value #RESEMBLING} corrections count like one that stands alone (a design effect; Kish, Survey Sampling, 1965, section 5.4). Of
 * c moved ones and a that were agreed with, n = (c + a)/3:
 * <ul>
 *   <li>m is Huber's location of all (Huber 1964, Ann. Math. Stat. 35:73, k = 1.5) in each direction, with s for the scale: the mean,
 *       to which none adds more than it would from 1.5 s away, so that one moves m by 3 s/(c + a) at most;
 *   <li>v = ((8 + 2·a/3)·s² + Σ r²/3) / (8 + 2·a/3 + 2·(c − 1)/3), with r what the moved ones lie from m by, both directions: the
 *       variance of e, for which the stated one counts like eight observations (an inverse χ² prior; Gelman et al., Bayesian Data
 *       Analysis, 3rd ed., section 3.3). One that was agreed with says that it was near enough, not how near:
 *       it counts in m, and in v with the stated s²;
 *   <li>w = n / (n + 2·v/s²) is how much of m is believed, the weight of n observations of variance v against that prior: the offset
 *       is w·m, and v·w/n what it is uncertain by;
 *   <li>the spread is √(v + v·w/n), and never below {@value #CLICK}. It comes below half of the stated one from forty moved ones on,
 *       if they all agree.
 * </ul>
 * That half is the coach's, that eight count like the stated spread, and that three count like one, are choices and were not measured.
 *
 * @param towards the offset, see {@link Correction}
 * @param up      likewise
 * @param spread  standard deviation in each direction of what is left
 */
public record Learnt(double towards, double up, double spread) {

    /** From fewer moved ones nothing is learnt. */
    public static final int LEAST = 8;
    /** No suggestion is nearer than a click: 2 px in a player who is 400 px high. */
    static final double CLICK = 0.005;

    private static final double HUBER = 1.5;
    private static final double STATED_COUNTS = 8;
    private static final double OF_THE_COACH = 0.5;
    /** So many corrections count like one of a player who is seen once. */
    static final int RESEMBLING = 3;
    /** Share of s to which a location is found; few steps come so near, and so many are never needed. */
    private static final double NEAR = 1e-6;

    private static final int STEPS = 100;

    /**
     * Empty while too few were moved.
     *
     * @param stated standard deviation in each direction that suggestions of this landmark have by themselves, above zero
     */
    static Optional<Learnt> of(List<Correction> corrections, double stated) {
        List<Correction> moved =
                corrections.stream().filter(c -> c.kind() == Kind.MOVED).toList();
        if (moved.size() < LEAST) {
            return Optional.empty();
        }
        double towards = middle(corrections, Correction::towards, stated);
        double up = middle(corrections, Correction::up, stated);
        double n = (double) corrections.size() / RESEMBLING;
        double asStated = STATED_COUNTS + 2.0 * (corrections.size() - moved.size()) / RESEMBLING;
        double squares = asStated * stated * stated;
        for (Correction c : moved) {
            squares += (Math.pow(c.towards() - towards, 2) + Math.pow(c.up() - up, 2)) / RESEMBLING;
        }
        double variance = squares / (asStated + 2.0 * (moved.size() - 1) / RESEMBLING);
        double believed = n / (n + variance / (OF_THE_COACH * stated * stated));
        double spread = Math.sqrt(variance + variance * believed / n);
        return Optional.of(new Learnt(believed * towards, believed * up, Math.max(CLICK, spread)));
    }

    /** Huber's location, from the median on. */
    private static double middle(List<Correction> corrections, ToDoubleFunction<Correction> of, double scale) {
        double[] values = corrections.stream().mapToDouble(of).sorted().toArray();
        int n = values.length;
        double middle = (values[(n - 1) / 2] + values[n / 2]) / 2;
        double step = scale;
        for (int i = 0; i < STEPS && Math.abs(step) > NEAR * scale; i++) {
            double from = middle;
            step = Arrays.stream(values)
                    .map(v -> Math.max(-HUBER * scale, Math.min(HUBER * scale, v - from)))
                    .average()
                    .orElse(0);
            middle += step;
        }
        return middle;
    }
}
