package org.toeline.flight.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.inference.TTest;
import org.junit.jupiter.api.Test;

/** Centres and Welch's difference against other programs. */
class CentreTest {

    private static final double[] WITH_A_MISHIT = {12.1, 12.9, 11.4, 13.3, 12.5, 12.0, 13.1, 4.2, 12.7, 11.9};

    /**
     * Reference: the root of Σψ = 0 by bracketing, and the variance by the influence function, computed by another
     * program from the published formulas: 12.441931 ± 0.228895.
     */
    @Test
    void biweightAgreesWithAnotherProgram() {
        Centre centre = Centre.of(WITH_A_MISHIT);
        assertThat(centre.value()).isCloseTo(12.441931, within(1e-5));
        assertThat(Math.sqrt(centre.variance())).isCloseTo(0.228895, within(1e-5));
        assertThat(centre.apart()).isEqualTo(1);
    }

    @Test
    void howFarAMishitFliesDoesNotMatter() {
        double[] farther = WITH_A_MISHIT.clone();
        farther[7] = -80;
        assertThat(Centre.of(farther)).isEqualTo(Centre.of(WITH_A_MISHIT));
    }

    @Test
    void ofFiveShotsNoneIsCalledAMishit() {
        Centre centre = Centre.of(new double[] {12, 13, 4, 12.5, 11.5});
        assertThat(centre.value()).isCloseTo(10.6, within(1e-12));
        assertThat(centre.apart()).isZero();
        assertThatThrownBy(() -> Centre.of(new double[] {1, 2})).hasMessageContaining("at least 3");
    }

    /** More than half of the figures the same: the spread cannot be taken from the middle, so it is the mean. */
    @Test
    void figuresThatAreMostlyTheSame() {
        Centre centre = Centre.of(new double[] {12, 12, 12, 12, 12, 13, 11});
        assertThat(centre.variance()).isPositive();
        assertThat(Centre.of(new double[] {12, 12, 12}).variance()).isZero();
    }

    /** Reference: Welch's t test of Apache Commons Math 3, over sizes and spreads. */
    @Test
    void welchAgreesWithAGeneralLibrary() {
        SimulatedSetups setups = new SimulatedSetups(11, SimulatedSetups.Mishits.NONE);
        for (int i = 0; i < 300; i++) {
            double[] a = setups.shots(3 + i % 28, 5, 1, 0);
            double[] b = setups.shots(3 + i % 11, 5.5, 0.3 + i % 5, 0);
            Welch welch = Welch.of(mean(a), mean(b));
            TTest library = new TTest();
            assertThat(-welch.difference() / welch.standardError()).isCloseTo(library.t(a, b), within(1e-10));
            double p = 2
                    * new TDistribution(welch.freedom())
                            .cumulativeProbability(-Math.abs(welch.difference()) / welch.standardError());
            assertThat(p).isCloseTo(library.tTest(a, b), within(1e-10));
        }
    }

    /** Up to five shots the interval is Welch's times the calibration, and nothing else. */
    @Test
    void smallSetupsGiveWelchTimesTheCalibration() {
        double[] a = {10.1, 11.4, 9.7, 10.9};
        double[] b = {12.0, 14.9, 10.2, 13.3, 12.8};
        Welch welch = Welch.of(mean(a), mean(b));
        Estimate estimate = Estimate.of(Centre.of(a), Centre.of(b));
        double half = new TDistribution(welch.freedom()).inverseCumulativeProbability(0.975) * welch.standardError();
        assertThat(estimate.difference()).isCloseTo(StatUtils.mean(b) - StatUtils.mean(a), within(1e-12));
        assertThat(estimate.halfWidth()).isCloseTo(half * Calibration.factor(4, 5, welch.share()), within(1e-6));
        assertThat(estimate.halfWidth() / half).isBetween(0.8, 1.2);
    }

    private static Centre mean(double[] x) {
        return new Centre(StatUtils.mean(x), StatUtils.variance(x) / x.length, x.length - 1, x.length, 0);
    }
}
