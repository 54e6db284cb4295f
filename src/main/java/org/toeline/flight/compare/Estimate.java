package org.toeline.flight.compare;

import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How far the second setup's shots lie from the first one's in one figure, in the unit used inside.
 *
 * @param difference the second centre less the first
 * @param low        lower end of the 95 % interval
 * @param high       upper end of it
 * @param p          the chance of a difference as large if there is none, by the same calibrated distribution: it is
 *                   below 0.05 exactly when the interval leaves out zero
 * @param apart      shots that were given no weight as mishits
 */
public record Estimate(double difference, double low, double high, double p, int apart) {

    static final double CONFIDENCE = 0.95;

    /** Welch's difference of two centres, calibrated; at least one of them must vary. */
    static Estimate of(Centre before, Centre after) {
        Welch welch = Welch.of(before, after);
        double scale = welch.standardError() * Calibration.factor(before.count(), after.count(), welch.share());
        TDistribution t = new TDistribution(welch.freedom());
        double half = t.inverseCumulativeProbability(0.5 + CONFIDENCE / 2) * scale;
        double p = 2 * t.cumulativeProbability(-Math.abs(welch.difference()) / scale);
        return new Estimate(
                welch.difference(),
                welch.difference() - half,
                welch.difference() + half,
                p,
                before.apart() + after.apart());
    }

    public double halfWidth() {
        return (high - low) / 2;
    }
}
