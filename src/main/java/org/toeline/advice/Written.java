package org.toeline.advice;

import java.util.Optional;

/**
 * A figure with its 95 % interval, rounded to be written: the half width rounded up keeps one or two digits, the value as
 * many decimals (JCGM 100:2008, 7.2.6), and more where the ends as they would be written contradict what is said of them.
 * All in the unit a person reads.
 *
 * @param half    half the interval, where it is written as value ± half; empty where that would contradict, and the ends are
 *                written themselves
 */
record Written(double value, Optional<Double> half, double low, double high, int decimals) {

    /** Half widths of this size and above are written with one digit, smaller ones with two. */
    private static final double ONE_DIGIT = 3;

    private static final int MOST_DECIMALS = 2;
    private static final int MOST_MORE = 2;
    /** What arithmetic may leave behind the last decimal. */
    private static final double DUST = 1e-7;

    /** Limits that the interval is held against. */
    record Limits(double low, double high) {}

    static int decimals(double halfWidth) {
        int decimals = 0;
        for (double h = halfWidth; h < ONE_DIGIT && decimals < MOST_DECIMALS; h *= 10) {
            decimals++;
        }
        return decimals;
    }

    static Written of(double value, double low, double high, Optional<Limits> limits) {
        int fewest = decimals(Math.max(high - value, value - low));
        for (int decimals = fewest; decimals <= fewest + MOST_MORE; decimals++) {
            Written even = even(value, low, high, decimals);
            if (even.agrees(low, high, limits)) {
                return even;
            }
        }
        Written ends = ends(value, low, high, fewest);
        for (int decimals = fewest + 1; decimals <= fewest + MOST_MORE && !ends.agrees(low, high, limits); decimals++) {
            ends = ends(value, low, high, decimals);
        }
        return ends;
    }

    /** Without its sign, for words that say the side. */
    Written unsigned() {
        return value < 0 ? new Written(-value, half, -high, -low, decimals) : this;
    }

    private static Written even(double value, double low, double high, int decimals) {
        double step = Math.pow(10, -decimals);
        double middle = Math.rint(value / step) * step;
        double half = Math.ceil(Math.max(high - middle, middle - low) / step - DUST) * step;
        return new Written(middle, Optional.of(half), middle - half, middle + half, decimals);
    }

    private static Written ends(double value, double low, double high, int decimals) {
        double step = Math.pow(10, -decimals);
        return new Written(
                Math.rint(value / step) * step,
                Optional.empty(),
                Math.floor(low / step + DUST) * step,
                Math.ceil(high / step - DUST) * step,
                decimals);
    }

    private boolean agrees(double trueLow, double trueHigh, Optional<Limits> limits) {
        return limits.isEmpty()
                || Verdict.of(low, high, limits.get().low, limits.get().high)
                        == Verdict.of(trueLow, trueHigh, limits.get().low, limits.get().high);
    }
}
