package org.toeline.flight.compare;

/**
 * What the half width of the interval is multiplied by so that it covers 95 % for 3 to 30 shots, equal and unequal
 * spreads, with and without one mishit in ten. Found by simulation (normal shots; spreads as 1 : 3, 1 : 1 and 3 : 1;
 * mishits 3 to 8 standard deviations off, to one side or to either, in neither, one or both setups) by making the worst
 * coverage of all those cases as near to 95 % as it goes; {@code docs/flight.md} has what came of it, from other random
 * numbers. Welch's own interval is too wide when both setups are small and have a mishit each, too narrow when one is
 * small and the other large; the biweight's is a little too narrow below ten shots.
 */
final class Calibration {

    private static final double[] COUNTS = {3, 4, 5, 6, 7, 8, 10, 15, 20, 30};
    private static final double[] FACTORS = {0.99, 0.957, 0.964, 1.26, 1.257, 1.155, 1.105, 1.075, 1.062, 1.066};
    private static final double MIXED = 0.037;
    private static final double MIXED_BALANCED = -0.129;

    private Calibration() {
    }

    /** @param share the first centre's share of the variance of the difference, 0 to 1 */
    static double factor(int firstCount, int secondCount, double share) {
        double first = factor(firstCount);
        double second = factor(secondCount);
        double balance = (double) Math.min(firstCount, secondCount) / Math.max(firstCount, secondCount);
        return Math.sqrt(share * first * first + (1 - share) * second * second)
                * (1 + (MIXED + MIXED_BALANCED * balance) * 4 * share * (1 - share));
    }

    /** Straight in 1/n between the counts that were simulated, held beyond the last. */
    private static double factor(int count) {
        int above = 0;
        while (above < COUNTS.length - 1 && COUNTS[above] < count) {
            above++;
        }
        if (above == 0 || COUNTS[above] <= count) {
            return FACTORS[above];
        }
        double share = (1.0 / COUNTS[above - 1] - 1.0 / count) / (1.0 / COUNTS[above - 1] - 1.0 / COUNTS[above]);
        return FACTORS[above - 1] + share * (FACTORS[above] - FACTORS[above - 1]);
    }
}
