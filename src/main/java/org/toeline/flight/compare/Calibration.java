package org.toeline.flight.compare;

/**
 * What the half width of the interval is multiplied by so that it covers 95 % for 3 to 30 shots, equal and unequal
 * spreads, with and without one mishit in ten. Found by simulation (normal shots; spreads as 1 : 3, 1 : 1 and 3 : 1;
 * mishits 3 to 8 standard deviations off, to one side or to either, in neither, one or both setups) by making the worst
 * coverage of all those cases as near to 95 % as it goes; {@code docs/flight.md} has what came of it, from other random
 * numbers. Welch's own interval is too wide when both setups are small and have a mishit each, too narrow when one is
 * small and the other large; the biweight's is a little too narrow below ten shots. Setups of three shots have a table of
 * their own, {@link OfThree}.
 */
final class Calibration {

    /** −1/n for 3, 4, 5, 6, 7, 8, 10, 15, 20 and 30 shots. */
    private static final double[] COUNTS = {
        -1.0 / 3, -1.0 / 4, -1.0 / 5, -1.0 / 6, -1.0 / 7, -1.0 / 8, -1.0 / 10, -1.0 / 15, -1.0 / 20, -1.0 / 30
    };

    private static final double[] FACTORS = {0.99, 0.957, 0.964, 1.26, 1.257, 1.155, 1.105, 1.075, 1.062, 1.066};
    private static final double MIXED = 0.037;
    private static final double MIXED_BALANCED = -0.129;

    private Calibration() {}

    /** @param share the first centre's share of the variance of the difference, 0 to 1 */
    static double factor(int firstCount, int secondCount, double share) {
        double first = factor(firstCount);
        double second = factor(secondCount);
        double balance = (double) Math.min(firstCount, secondCount) / Math.max(firstCount, secondCount);
        double usual = Math.sqrt(share * first * first + (1 - share) * second * second)
                * (1 + (MIXED + MIXED_BALANCED * balance) * 4 * share * (1 - share));
        if (firstCount == OfThree.COUNT) {
            return usual * OfThree.factor(secondCount, share);
        }
        return secondCount == OfThree.COUNT ? usual * OfThree.factor(firstCount, 1 - share) : usual;
    }

    /** Straight in 1/n between the counts that were simulated, held beyond the last. */
    private static double factor(int count) {
        return between(COUNTS, FACTORS, -1.0 / count);
    }

    /** Straight between points of a table whose places rise; held beyond its ends. */
    static double between(double[] places, double[] values, double at) {
        if (at <= places[0]) {
            return values[0];
        }
        for (int i = 1; i < places.length; i++) {
            if (at <= places[i]) {
                return values[i - 1] + (at - places[i - 1]) / (places[i] - places[i - 1]) * (values[i] - values[i - 1]);
            }
        }
        return values[values.length - 1];
    }
}
