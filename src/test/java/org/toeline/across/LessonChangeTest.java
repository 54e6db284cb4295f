package org.toeline.across;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.toeline.reading.Measured;

/** Changes, own spread and trend: by hand, by simulation, and against a general statistics library. */
class LessonChangeTest {

    private static final double EXACT = 1e-9;

    private static Measured m(double value, double u) {
        return new Measured(value, u);
    }

    private static OwnSpread spread(double s, int freedom) {
        return new OwnSpread(s, s, freedom);
    }

    @Test
    void smallestDetectableByHand() {
        LessonChange change = LessonChange.between(m(10, 3), m(21, 4), OwnSpread.UNKNOWN);
        assertThat(change.difference()).isEqualTo(11);
        assertThat(change.smallestDetectable()).as("1.96·√(9+16)").isCloseTo(9.8, within(EXACT));
        assertThat(change.call()).isEqualTo(ChangeCall.REAL);
        LessonChange steady = LessonChange.between(m(10, 3), m(21, 4), spread(6, 10));
        assertThat(steady.smallestDetectable()).as("1.96·√(9+16+72)").isCloseTo(1.96 * Math.sqrt(97), within(EXACT));
        assertThat(steady.call()).isEqualTo(ChangeCall.NOT_SHOWN);
    }

    /** With s = SEM and no other uncertainty it is Weir's minimal difference: SEM 7.557 → 20.95. */
    @Test
    void isWeirsMinimalDifference() {
        assertThat(LessonChange.between(m(0, 1e-6), m(0, 1e-6), spread(7.557, 7))
                        .smallestDetectable())
                .isCloseTo(20.95, within(0.005));
    }

    @Test
    void callsOnBothSidesOfTheLimits() {
        assertThat(LessonChange.between(m(0, 3), m(-9.81, 4), OwnSpread.UNKNOWN).call())
                .isEqualTo(ChangeCall.REAL);
        assertThat(LessonChange.between(m(0, 3), m(-9.79, 4), OwnSpread.UNKNOWN).call())
                .isEqualTo(ChangeCall.TOO_CLOSE);
        assertThat(LessonChange.between(m(0, 3), m(6.41, 4), OwnSpread.UNKNOWN).call())
                .isEqualTo(ChangeCall.TOO_CLOSE);
        assertThat(LessonChange.between(m(0, 3), m(6.40, 4), OwnSpread.UNKNOWN).call())
                .isEqualTo(ChangeCall.NOT_SHOWN);
    }

    /** s 1, at most 2: 1.96·√2·2 = 5.54 is needed to be sure, 1.28·√2 = 1.81 to be near it. */
    @Test
    void aSpreadFromFewRepeatsAsksForMore() {
        OwnSpread few = new OwnSpread(1, 2, 3);
        Measured exact = m(0, 1e-6);
        assertThat(LessonChange.between(exact, m(1.8, 1e-6), few).call()).isEqualTo(ChangeCall.NOT_SHOWN);
        assertThat(LessonChange.between(exact, m(5.5, 1e-6), few).call()).isEqualTo(ChangeCall.TOO_CLOSE);
        assertThat(LessonChange.between(exact, m(5.6, 1e-6), few).call()).isEqualTo(ChangeCall.REAL);
    }

    /** Two groups, pooled: squares 2 + 8 over 3 degrees of freedom, less u² = 0.25. */
    @Test
    void ownSpreadByHand() {
        OwnSpread s = OwnSpread.ofRepeats(
                List.of(List.of(m(4, 0.5), m(6, 0.5)), List.of(m(1, 0.5), m(3, 0.5), m(5, 0.5)), List.of(m(100, 0.5))));
        assertThat(s.degreesOfFreedom()).isEqualTo(3);
        assertThat(s.standardDeviation()).isCloseTo(Math.sqrt(10.0 / 3 - 0.25), within(EXACT));
        assertThat(s.plausibly())
                .as("χ² at 0.2 with 3 degrees of freedom is 1.005")
                .isCloseTo(Math.sqrt(10 / 1.005 - 0.25), within(0.001));
        assertThat(OwnSpread.ofRepeats(List.of(List.of(m(4, 0.5), m(5, 0.5)))).isKnown())
                .as("one pair")
                .isFalse();
        OwnSpread steady = OwnSpread.ofRepeats(List.of(List.of(m(4, 9), m(4.1, 9), m(4, 9), m(4.2, 9))));
        assertThat(steady.standardDeviation()).as("never negative").isZero();
        assertThat(steady.isKnown()).isTrue();
    }

    /**
     * Players who did not change, s 1.5 learnt from five repeats, u 1: at most 5 % are called real (three standard
     * deviations of 4000 draws are 1 %). With 1.96 of the estimate alone it is 11 %.
     */
    @Test
    void seldomCallsRealWhatIsNot() {
        Random random = new Random(11);
        int real = 0;
        int trials = 4000;
        for (int i = 0; i < trials; i++) {
            List<Measured> repeats = new ArrayList<>();
            for (int k = 0; k < 5; k++) {
                repeats.add(m(random.nextGaussian() * Math.hypot(1.5, 1), 1));
            }
            OwnSpread s = OwnSpread.ofRepeats(List.of(repeats));
            double a = random.nextGaussian() * Math.hypot(1.5, 1);
            double b = random.nextGaussian() * Math.hypot(1.5, 1);
            real += LessonChange.between(m(a, 1), m(b, 1), s).call() == ChangeCall.REAL ? 1 : 0;
        }
        assertThat(real / (double) trials).isBetween(0.02, 0.06);
    }

    /** A weighted line is a general statistics library's generalised least squares with the same covariance. */
    @Test
    void trendAgreesWithAStatisticsLibrary() {
        Random random = new Random(3);
        int unsteady = 0;
        for (int round = 0; round < 20; round++) {
            int n = 3 + random.nextInt(30);
            List<Trend.Point> points = new ArrayList<>();
            double[] y = new double[n];
            double[][] x = new double[n][1];
            double[] variance = new double[n];
            for (int i = 0; i < n; i++) {
                double u = 0.5 + random.nextDouble();
                x[i][0] = i + random.nextDouble();
                y[i] = 3 + 0.2 * x[i][0] + u * random.nextGaussian();
                variance[i] = u * u;
                points.add(new Trend.Point(x[i][0], m(y[i], u)));
            }
            GLSMultipleLinearRegression gls = new GLSMultipleLinearRegression();
            gls.newSampleData(
                    y, x, MatrixUtils.createRealDiagonalMatrix(variance).getData());
            Trend trend = Trend.of(points, OwnSpread.UNKNOWN).orElseThrow();
            double[] beta = gls.estimateRegressionParameters();
            assertThat(trend.slope()).isCloseTo(beta[1], within(1e-8));
            assertThat(trend.meanValue() - trend.slope() * trend.meanX()).isCloseTo(beta[0], within(1e-7));
            // the library scales by the misfit always; ours only upwards (Birge), so below 1 its scaling is taken back
            double misfit = gls.estimateErrorVariance();
            double scaled = gls.estimateRegressionParametersStandardErrors()[1];
            assertThat(trend.slopeStandardUncertainty())
                    .isCloseTo(misfit > 1 ? scaled : scaled / Math.sqrt(misfit), within(1e-8));
            unsteady += misfit > 1 ? 1 : 0;
            assertThat(trend.misfit()).isCloseTo(misfit, within(1e-8));
        }
        assertThat(unsteady).as("both cases were met").isBetween(3, 17);
    }

    @Test
    void trendByHandAndWithoutOne() {
        List<Trend.Point> two = List.of(new Trend.Point(0, m(1, 3)), new Trend.Point(1, m(12, 4)));
        Trend trend = Trend.of(two, OwnSpread.UNKNOWN).orElseThrow();
        assertThat(trend.slope()).isCloseTo(11, within(EXACT));
        assertThat(trend.slopeStandardUncertainty()).as("√(9+16)").isCloseTo(5, within(EXACT));
        assertThat(trend.call()).isEqualTo(ChangeCall.REAL);
        assertThat(Trend.of(two, spread(6, 30)).orElseThrow().call()).isEqualTo(ChangeCall.NOT_SHOWN);
        assertThat(Trend.of(two.subList(0, 1), OwnSpread.UNKNOWN)).isEmpty();
        assertThat(Trend.of(List.of(two.get(0), two.get(0)), OwnSpread.UNKNOWN)).isEmpty();
        assertThat(Trend.of(List.of(), OwnSpread.UNKNOWN)).isEmpty();
    }
}
