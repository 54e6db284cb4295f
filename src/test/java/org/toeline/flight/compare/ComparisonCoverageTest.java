package org.toeline.flight.compare;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.toeline.flight.compare.SimulatedSetups.Kind;
import org.toeline.flight.compare.SimulatedSetups.Rates;

/** A short run of {@link ComparisonStudy}, fixed seeds: what is not there is seldom called real, what is there is held. */
class ComparisonCoverageTest {

    private static final int TRIALS = 200;
    /** The aim, at most 6 %, with three standard errors of a share over that many trials. */
    private static final double MOST = 0.06 + 3 * Math.sqrt(0.06 * 0.94 / TRIALS);

    @ParameterizedTest
    @EnumSource(Kind.class)
    void whatIsNotThereIsSeldomCalledReal(Kind kind) {
        for (int[] n : new int[][] {{5, 5}, {15, 15}}) {
            Rates rates = new SimulatedSetups(500 + n[0]).rates(kind, n[0], n[1], ComparisonStudy.ONE, 0, TRIALS);
            assertThat(rates.real()).as("%s, %d and %d", kind, n[0], n[1]).isLessThan(MOST);
            assertThat(rates.held()).as("%s, %d and %d", kind, n[0], n[1]).isGreaterThan(1 - MOST);
        }
    }

    /** Who never calls anything real is never wrong: a change of two spreads is found by fifteen shots of each. */
    @ParameterizedTest
    @EnumSource(
            value = Kind.class,
            names = {"NORMAL", "TOPPED", "ALIKE_IN_TURNS"})
    void whatIsThereIsFound(Kind kind) {
        Rates rates = new SimulatedSetups(3).rates(kind, 15, 15, ComparisonStudy.ONE, 2, 60);
        assertThat(rates.real()).isGreaterThan(0.75);
    }
}
