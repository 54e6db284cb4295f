package org.toeline.flight.compare;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.toeline.flight.compare.SimulatedSetups.Mishits;

/**
 * A short run of {@link ComparisonStudy}: simulated setups of known difference, 3 to 30 shots, equal and unequal spreads,
 * with and without mishits; fixed seeds. The full table is in docs/flight.md.
 */
class ComparisonCoverageTest {

    private static final int TRIALS = 2000;
    private static final int[][] COUNTS = {{3, 3}, {3, 10}, {5, 5}, {6, 6}, {8, 20}, {10, 10}, {30, 30}};
    /** The aim, 93 to 97 %, with three standard errors of a share over that many trials on either side. */
    private static final double LEAST = 0.93 - 3 * Math.sqrt(0.93 * 0.07 / TRIALS);

    private static final double MOST = 0.97 + 3 * Math.sqrt(0.97 * 0.03 / TRIALS);
    /** The same for the mean over all of them. */
    private static final double MEAN_LEAST = 0.942;

    private static final double MEAN_MOST = 0.96;

    @ParameterizedTest
    @EnumSource(Mishits.class)
    void intervalsHoldTheTrueDifference(Mishits mishits) {
        double sum = 0;
        int cases = 0;
        for (int[] n : COUNTS) {
            for (double ratio : new double[] {1.0 / 3, 1, 3}) {
                double coverage =
                        new SimulatedSetups(500 + n[0] * 37L + n[1], mishits).coverage(n[0], n[1], ratio, TRIALS);
                assertThat(coverage)
                        .as("%d and %d shots, spreads 1 : %s", n[0], n[1], ratio)
                        .isBetween(LEAST, MOST);
                sum += coverage;
                cases++;
            }
        }
        assertThat(sum / cases).isBetween(MEAN_LEAST, MEAN_MOST);
    }
}
