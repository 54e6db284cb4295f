package org.toeline.flight.compare;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.descriptive.rank.Percentile;

/**
 * One figure of two setups, in the order in which it was measured, and the difference of the two middles in units of its own
 * standard error: {@link Centre} for the middles, {@link Welch} for unequal spreads, and {@link Likeness} for shots that are
 * like the one before.
 */
final class OrderedFigures {

    /**
     * By how much a difference whose variance comes from one setup alone counts for less: its standard error is known by that
     * setup's shots only, and setups of unequal spreads look so more often than shuffled ones. Found by simulation; more where
     * the middle of few shots is a robust one, and most where it is one of six or seven, which know their own spread badly.
     */
    private static final double ONE_SIDED = 0.2;

    private static final double ONE_SIDED_ROBUST = 1.2;
    private static final int ROBUST_FEW = 12;
    private static final double ONE_SIDED_FEWEST = 2.0;
    private static final int ROBUST_FEWEST = 8;

    /**
     * Nothing within so many interquartile ranges of all shots together is left out of a standard error. Where two setups lie far
     * apart, a shuffle deals each some shots of the other: dropped as mishits, they would leave a small error about a large
     * difference, and the one that was found would be nothing rare. Of two heaps that are far apart the range is nearly the
     * distance. Less than one reaches no heap; this much is seldom more than the reach of a setup's own spread where nothing
     * changed. Found by simulation.
     */
    private static final double REACH = 1.5;

    private final double[] values;
    private final boolean[] second;
    private final Neighbours neighbours;
    private final double reach;

    /**
     * @param values in the order they were hit
     * @param second which of them are of the second setup
     */
    OrderedFigures(double[] values, boolean[] second) {
        this(values, second, Neighbours.of(second), REACH * interquartileRange(values));
    }

    private OrderedFigures(double[] values, boolean[] second, Neighbours neighbours, double reach) {
        this.values = values;
        this.second = second;
        this.neighbours = neighbours;
        this.reach = reach;
    }

    /** Straight between the ordered figures; it hangs on no order of hitting and on no setup, so that every shuffle has it. */
    private static double interquartileRange(double[] values) {
        Percentile quartiles = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
        quartiles.setData(values);
        return values.length == 0 ? 0 : quartiles.evaluate(75) - quartiles.evaluate(25);
    }

    /**
     * What came of it.
     *
     * @param before   middle of the first setup
     * @param after    middle of the second
     * @param error    standard error of their difference, as it would be if no shot were like the one before, guarded
     * @param likeness how much shots are like the one before, of these figures alone
     */
    record Studentized(Centre before, Centre after, double error, double likeness) {

        double difference() {
            return after.value() - before.value();
        }

        /** The share of the variance that comes from the first setup. */
        private double share() {
            return before.variance() / (before.variance() + after.variance());
        }

        /**
         * By what the standard error is multiplied: for shots that are like the one before, and where one setup's spread decides
         * alone.
         *
         * @param likeness what counts, which may be more than these figures alone show
         */
        double widening(Neighbours neighbours, double likeness) {
            if (!(error > 0)) {
                return 1;
            }
            double one = 2 * share() - 1;
            return Likeness.widening(neighbours, before, after, likeness)
                    * (1 + oneSided(Math.min(before.count(), after.count())) * one * one);
        }

        private static double oneSided(int fewer) {
            if (fewer < Centre.LEAST_ROBUST || fewer >= ROBUST_FEW) {
                return ONE_SIDED;
            }
            return fewer < ROBUST_FEWEST ? ONE_SIDED_FEWEST : ONE_SIDED_ROBUST;
        }

        /** The difference in widened standard errors; zero where nothing varies. */
        double t(Neighbours neighbours, double likeness) {
            return error > 0 ? Math.abs(difference()) / error / widening(neighbours, likeness) : 0;
        }

        /** The chance of a difference as large if there is none, by the usual calibrated interval. */
        double usualP(double widening) {
            double halves = Math.abs(difference()) / (usual() * usualError() * widening);
            return 2 * student().cumulativeProbability(-halves * critical());
        }

        /** The standard error by both setups' own middles, shots that lie far from them left out. */
        double usualError() {
            return Math.sqrt(before.variance() + after.variance());
        }

        /** What half of a usual 95 % interval is in standard errors, calibrated for setups of few shots. */
        double usual() {
            return critical() * Calibration.factor(before.count(), after.count(), share());
        }

        private double critical() {
            return student().inverseCumulativeProbability(0.5 + Estimate.CONFIDENCE / 2);
        }

        private TDistribution student() {
            return new TDistribution(Welch.of(before, after).freedom());
        }
    }

    /** Whether the figures of either setup vary. */
    boolean spreads() {
        return Centre.of(of(false)).variance() + Centre.of(of(true)).variance() > 0;
    }

    int count(boolean of) {
        return neighbours.shots()[of ? 1 : 0];
    }

    Neighbours neighbours() {
        return neighbours;
    }

    /** The same figures in another order, the setups' places kept. */
    OrderedFigures reordered(int[] order) {
        double[] out = new double[values.length];
        Arrays.setAll(out, i -> values[order[i]]);
        return new OrderedFigures(out, second, neighbours, reach);
    }

    private double[] of(boolean wanted) {
        double[] some = new double[count(wanted)];
        int at = 0;
        for (int i = 0; i < values.length; i++) {
            if (second[i] == wanted) {
                some[at++] = values[i];
            }
        }
        return some;
    }

    Studentized studentized() {
        Centre before = Centre.of(of(false), reach);
        Centre after = Centre.of(of(true), reach);
        double error = Math.sqrt(before.guarded() + after.guarded());
        return new Studentized(before, after, error, Likeness.of(values, second, before.value(), after.value()));
    }
}
