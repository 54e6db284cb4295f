package org.toeline.flight.compare;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * One figure of two setups, in the order in which it was measured, and the difference of the two middles in units of its own
 * standard error: {@link Centre} for the middles, {@link Welch} for unequal spreads, and {@link Likeness} for shots that are
 * like the one before.
 *
 * @param values in the order they were hit
 * @param second which of them are of the second setup
 */
record OrderedFigures(double[] values, boolean[] second) {

    /**
     * What came of it.
     *
     * @param before   middle of the first setup
     * @param after    middle of the second
     * @param error    standard error of their difference, as it would be if no shot were like the one before
     * @param widening by what it is multiplied since some are ({@link Likeness#widening})
     * @param freedom  its degrees of freedom
     * @param usual    what half of a usual 95 % interval is in standard errors, calibrated for setups of few shots
     */
    record Studentized(Centre before, Centre after, double error, double widening, double freedom, double usual) {

        double difference() {
            return after.value() - before.value();
        }

        /** The chance of a difference as large if there is none, by the usual calibrated interval. */
        double usualP() {
            TDistribution t = new TDistribution(freedom);
            double critical = t.inverseCumulativeProbability(0.5 + Estimate.CONFIDENCE / 2);
            return 2 * t.cumulativeProbability(-Math.abs(difference()) / error / widening * critical / usual);
        }
    }

    /** Whether the figures of either setup vary. */
    boolean spreads() {
        return Centre.of(of(values, false)).variance()
                        + Centre.of(of(values, true)).variance()
                > 0;
    }

    int count(boolean of) {
        int n = 0;
        for (boolean s : second) {
            n += s == of ? 1 : 0;
        }
        return n;
    }

    /** The same figures in another order, the setups' places kept. */
    double[] reordered(int[] order) {
        double[] out = new double[values.length];
        Arrays.setAll(out, i -> values[order[i]]);
        return out;
    }

    private double[] of(double[] all, boolean wanted) {
        double[] some = new double[count(wanted)];
        int at = 0;
        for (int i = 0; i < all.length; i++) {
            if (second[i] == wanted) {
                some[at++] = all[i];
            }
        }
        return some;
    }

    Studentized studentized() {
        Centre before = Centre.of(of(values, false));
        Centre after = Centre.of(of(values, true));
        Welch welch = Welch.of(before, after);
        double rho = Likeness.of(values, second, before.value(), after.value());
        double usual = new TDistribution(welch.freedom()).inverseCumulativeProbability(0.5 + Estimate.CONFIDENCE / 2)
                * Calibration.factor(before.count(), after.count(), welch.share());
        return new Studentized(
                before,
                after,
                welch.standardError(),
                Likeness.widening(second, before, after, rho),
                welch.freedom(),
                usual);
    }

    /** The difference in standard errors alone, for other figures in these places; zero where nothing varies. */
    double t(double[] figures) {
        Centre before = Centre.of(of(figures, false));
        Centre after = Centre.of(of(figures, true));
        double variance = before.variance() + after.variance();
        return variance > 0 ? Math.abs(after.value() - before.value()) / Math.sqrt(variance) : 0;
    }
}
