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
        SimulatedSetups setups = new SimulatedSetups(11);
        for (int i = 0; i < 300; i++) {
            double[] a = setups.normal(3 + i % 28, 5, 1);
            double[] b = setups.normal(3 + i % 11, 5.5, 0.3 + i % 5);
            Welch welch = Welch.of(mean(a), mean(b));
            TTest library = new TTest();
            assertThat(-welch.difference() / welch.standardError()).isCloseTo(library.t(a, b), within(1e-10));
            double p = 2
                    * new TDistribution(welch.freedom())
                            .cumulativeProbability(-Math.abs(welch.difference()) / welch.standardError());
            assertThat(p).isCloseTo(library.tTest(a, b), within(1e-10));
        }
    }

    private static Centre mean(double[] x) {
        return new Centre(
                StatUtils.mean(x),
                StatUtils.variance(x) / x.length,
                StatUtils.variance(x) / x.length,
                x.length - 1,
                x.length,
                0);
    }

    /** Reference: a process of order one drawn here with a likeness of 0.4; the estimate's mean over many comes near it. */
    @Test
    void likenessIsFound() {
        double sum = 0;
        for (int i = 0; i < 300; i++) {
            HitOrder order = new SimulatedSetups(i)
                    .order(
                            SimulatedSetups.Kind.ALIKE,
                            30,
                            30,
                            java.util.List.of(org.toeline.flight.ShotFigure.CARRY),
                            0);
            double[] values = order.shots().stream()
                    .mapToDouble(
                            s -> s.figure(org.toeline.flight.ShotFigure.CARRY).orElseThrow())
                    .toArray();
            double[] first = java.util.Arrays.copyOf(values, 30);
            double[] second = java.util.Arrays.copyOfRange(values, 30, 60);
            sum += Likeness.of(values, order.seconds(), StatUtils.mean(first), StatUtils.mean(second)) / 300;
        }
        assertThat(sum).isBetween(0.35, 0.47);
    }

    /**
     * Reference: SciPy 1.17.1, Welch's statistic: 2.510233 and 0.730886; and a program of our own on NumPy that writes the
     * likeness and the allowance as full covariances and deals the shots out 100,000 times: statistics 9.288438 and 0.524807, p
     * 0.00935 and 0.66351. Ours deals 499 times by lot: three standard errors of a share, and one deal.
     */
    @Test
    void shufflesAgreeWithAnotherProgram() {
        double[][] before = {{201, 204.5, 198, 207, 203}, {201, 204.5, 198, 207}};
        double[][] after = {{209, 212.5, 206, 203.5, 215}, {203, 212.5, 206, 203.5, 199}};
        double[] welch = {2.510233, 0.730886};
        double[] statistic = {9.288438, 0.524807};
        double[] p = {0.00935, 0.66351};
        for (int i = 0; i < before.length; i++) {
            int first = before[i].length;
            int n = first + after[i].length;
            double[] all = java.util.Arrays.copyOf(before[i], n);
            System.arraycopy(after[i], 0, all, first, after[i].length);
            boolean[] second = new boolean[n];
            java.util.Arrays.fill(second, first, n, true);
            int[] places = java.util.stream.IntStream.range(0, n).toArray();
            OrderedFigures figures = new OrderedFigures(all, second);
            OrderedFigures.Studentized found = figures.studentized();
            assertThat(Math.abs(found.difference()) / found.error()).isCloseTo(welch[i], within(1e-6));
            Shuffled shuffled = Shuffled.of(java.util.List.of(figures), java.util.List.of(places), n);
            assertThat(shuffled.statistics()[0][0]).isCloseTo(statistic[i], within(1e-6));
            assertThat(shuffled.p(0)).isCloseTo(p[i], within(3 * Math.sqrt(p[i] * (1 - p[i]) / 499) + 1 / 500.0));
        }
    }
}
