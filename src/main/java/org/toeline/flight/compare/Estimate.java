package org.toeline.flight.compare;

/**
 * How far the second setup's shots lie from the first one's in one figure, in the unit used inside.
 *
 * @param difference the second centre less the first
 * @param low        lower end of the 95 % interval
 * @param high       upper end of it
 * @param p          the chance of a difference as large if there is none: below 0.05 exactly when the interval leaves out zero
 * @param apart      shots that were given no weight as mishits
 */
public record Estimate(double difference, double low, double high, double p, int apart) {

    static final double CONFIDENCE = 0.95;

    public double halfWidth() {
        return (high - low) / 2;
    }
}
