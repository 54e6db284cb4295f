package org.toeline.flight.compare;

/**
 * The difference of two centres whose spreads need not be alike, with its standard error and the degrees of freedom of
 * Welch and Satterthwaite (Welch 1947, Biometrika 34:28).
 *
 * @param share the first centre's share of the variance of the difference, [0, 1]
 */
record Welch(double difference, double standardError, double freedom, double share) {

    static Welch of(Centre before, Centre after) {
        double variance = before.variance() + after.variance();
        if (!(variance > 0)) {
            throw new IllegalArgumentException("neither setup's figures vary; their difference has no interval");
        }
        double freedom = variance
                * variance
                / (before.variance() * before.variance() / before.freedom()
                        + after.variance() * after.variance() / after.freedom());
        return new Welch(after.value() - before.value(), Math.sqrt(variance), freedom, before.variance() / variance);
    }
}
