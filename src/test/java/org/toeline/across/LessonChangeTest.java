package org.toeline.across;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.reading.Measured;
import org.toeline.reading.ReadingKind;

/** Changes, own spread and trend: by hand, by simulation, and against a general statistics library. */
class LessonChangeTest {

    private static final double EXACT = 1e-9;

    private static Measured m(double value, double u) {
        return new Measured(value, u);
    }

    private static OwnSpread spread(double s, int freedom) {
        return new OwnSpread(s, freedom, freedom);
    }

    /** No spread at all, known for certain. */
    private static final OwnSpread NONE = new OwnSpread(0, 1e4, 3);

    @Test
    void smallestDetectableByHand() {
        LessonChange change = LessonChange.between(m(10, 3), m(21, 4), NONE, Family.ALONE);
        assertThat(change.difference()).isEqualTo(11);
        assertThat(change.smallestDetectable()).as("1.96·√(9+16)").isCloseTo(9.8, within(0.005));
        assertThat(change.call()).isEqualTo(ChangeCall.REAL);
        LessonChange steady = LessonChange.between(m(10, 3), m(21, 4), spread(6, 10_000), Family.ALONE);
        assertThat(steady.smallestDetectable()).as("1.96·√(9+16+72)").isCloseTo(1.96 * Math.sqrt(97), within(0.01));
        assertThat(steady.call()).isEqualTo(ChangeCall.NOT_SHOWN);
    }

    /** With s = SEM and no other uncertainty it is Weir's minimal difference: SEM 7.557 → 20.95, were s known for certain. */
    @Test
    void isWeirsMinimalDifference() {
        assertThat(LessonChange.between(m(0, 1e-6), m(0, 1e-6), spread(7.557, 10_000), Family.ALONE)
                        .smallestDetectable())
                .isCloseTo(20.95, within(0.005));
    }

    /** Student's t with 5 degrees of freedom is 2.571 at 95 % (the usual table). */
    @Test
    void aSpreadFromFewRepeatsAsksForMore() {
        assertThat(LessonChange.between(m(0, 1e-6), m(0, 1e-6), spread(1, 5), Family.ALONE)
                        .smallestDetectable())
                .isCloseTo(2.571 * Math.sqrt(2), within(0.002));
        assertThat(LessonChange.between(m(0, 1), m(0, 1), spread(1e-3, 5), Family.ALONE)
                        .smallestDetectable())
                .as("what is hardly there need not be known well")
                .isCloseTo(1.96 * Math.sqrt(2), within(0.002));
    }

    @Test
    void callsOnBothSidesOfTheLimits() {
        assertThat(LessonChange.between(m(0, 3), m(-9.82, 4), NONE, Family.ALONE)
                        .call())
                .isEqualTo(ChangeCall.REAL);
        assertThat(LessonChange.between(m(0, 3), m(-9.79, 4), NONE, Family.ALONE)
                        .call())
                .isEqualTo(ChangeCall.TOO_CLOSE);
        assertThat(LessonChange.between(m(0, 3), m(6.42, 4), NONE, Family.ALONE).call())
                .isEqualTo(ChangeCall.TOO_CLOSE);
        assertThat(LessonChange.between(m(0, 3), m(6.40, 4), NONE, Family.ALONE).call())
                .isEqualTo(ChangeCall.NOT_SHOWN);
        assertThat(LessonChange.between(m(0, 3), m(-9.82, 4), NONE, new Family(20))
                        .call())
                .as("one of twenty that are looked at together")
                .isEqualTo(ChangeCall.TOO_CLOSE);
    }

    /** Two groups, pooled: squares 2 + 8 over 3 degrees of freedom; then with the usual spread, 5 of 1.5². */
    @Test
    void ownSpreadByHand() {
        OwnSpread usual = OwnSpread.usual(ReadingKind.SHOULDER_TILT);
        OwnSpread s = OwnSpread.ofRepeats(
                List.of(List.of(m(4, 0.5), m(6, 0.5)), List.of(m(1, 0.5), m(3, 0.5), m(5, 0.5)), List.of(m(100, 0.5))),
                usual);
        double tells = 3 * Math.pow(2.25 / 2.5, 2);
        assertThat(s.repeats()).isEqualTo(3);
        assertThat(s.degreesOfFreedom()).isCloseTo(5 + tells, within(EXACT));
        assertThat(s.standardDeviation())
                .isCloseTo(Math.sqrt((5 * 2.25 + tells * 10.0 / 3) / (5 + tells)), within(EXACT));
        assertThat(s.isKnown()).isTrue();
        assertThat(OwnSpread.ofRepeats(List.of(List.of(m(4, 0.5), m(5, 0.5))), usual)
                        .isKnown())
                .as("one pair")
                .isFalse();
        OwnSpread steady = OwnSpread.ofRepeats(List.of(List.of(m(4, 9), m(4.1, 9), m(4, 9), m(4.2, 9))), usual);
        assertThat(steady.standardDeviation())
                .as("measured worse than players vary: it says nothing of the player")
                .isCloseTo(1.5, within(0.01));
    }

    /**
     * Players who did not change, whose steadiness differs by a third about the usual, u 1: at most 5 % are called real, also where
     * all repeats err by the same, as they nearly do when they are filmed from one place.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.7, 1})
    void seldomCallsRealWhatIsNot(double shared) {
        Random random = new Random(11);
        for (int repeated : new int[] {0, 2, 5, 20}) {
            int real = 0;
            int trials = 4000;
            for (int i = 0; i < trials; i++) {
                double own = 1.5 * Math.exp(random.nextGaussian() / 3);
                List<Measured> repeats = new ArrayList<>();
                double together = shared * random.nextGaussian();
                for (int k = 0; k < repeated; k++) {
                    double apart = Math.sqrt(1 - shared * shared) * random.nextGaussian();
                    repeats.add(m(random.nextGaussian() * own + apart + together, 1));
                }
                OwnSpread s = OwnSpread.ofRepeats(List.of(repeats), OwnSpread.usual(ReadingKind.SHOULDER_TILT));
                double a = random.nextGaussian() * Math.hypot(own, 1);
                double b = random.nextGaussian() * Math.hypot(own, 1);
                real += LessonChange.between(m(a, 1), m(b, 1), s, Family.ALONE).call() == ChangeCall.REAL ? 1 : 0;
            }
            assertThat(real / (double) trials).as(repeated + " repeats").isBetween(0.01, 0.06);
        }
    }

    /** The same of a trend over three lessons or more: with 1.96 and an unknown spread it was 20 %. */
    @Test
    void seldomCallsATrendWhatIsNone() {
        Random random = new Random(12);
        for (int lessons : new int[] {3, 4, 7, 10}) {
            int real = 0;
            int trials = 4000;
            for (int i = 0; i < trials; i++) {
                double own = 1.5 * Math.exp(random.nextGaussian() / 3);
                List<Trend.Point> points = new ArrayList<>();
                for (int k = 0; k < lessons; k++) {
                    points.add(new Trend.Point(k, m(random.nextGaussian() * Math.hypot(own, 1), 1)));
                }
                real += Trend.of(points, OwnSpread.usual(ReadingKind.SHOULDER_TILT), Family.ALONE)
                                        .orElseThrow()
                                        .call()
                                == ChangeCall.REAL
                        ? 1
                        : 0;
            }
            assertThat(real / (double) trials).as(lessons + " lessons").isBetween(0.01, 0.06);
        }
    }

    /** Twenty independent readings of nothing, looked at together. */
    @Test
    void aFamilyIsHeldTogether() {
        assertThat(Family.ALONE.each()).isCloseTo(0.05, within(EXACT));
        assertThat(1 - Math.pow(1 - new Family(20).each(), 20)).isCloseTo(0.05, within(EXACT));
    }

    /** A weighted line is a general statistics library's generalised least squares with the same covariance. */
    @Test
    void trendAgreesWithAStatisticsLibrary() {
        Random random = new Random(3);
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
            Trend trend = Trend.of(points, NONE, Family.ALONE).orElseThrow();
            double[] beta = gls.estimateRegressionParameters();
            assertThat(trend.slope()).isCloseTo(beta[1], within(1e-8));
            assertThat(trend.meanValue() - trend.slope() * trend.meanX()).isCloseTo(beta[0], within(1e-7));
            // the library scales by the misfit; here the uncertainties are known for certain, and nothing is left to
            // scale
            double libraries =
                    gls.estimateRegressionParametersStandardErrors()[1] / Math.sqrt(gls.estimateErrorVariance());
            assertThat(trend.slopeStandardUncertainty()).isCloseTo(libraries, within(0.02 * libraries));
            assertThat(trend.misfit()).isCloseTo(gls.estimateErrorVariance(), within(1e-8));
        }
    }

    @Test
    void trendByHandAndWithoutOne() {
        List<Trend.Point> two = List.of(new Trend.Point(0, m(1, 3)), new Trend.Point(1, m(12, 4)));
        Trend trend = Trend.of(two, NONE, Family.ALONE).orElseThrow();
        assertThat(trend.slope()).isCloseTo(11, within(EXACT));
        assertThat(trend.slopeStandardUncertainty()).as("√(9+16)").isCloseTo(5, within(EXACT));
        assertThat(trend.call()).isEqualTo(ChangeCall.REAL);
        assertThat(Trend.of(two, spread(6, 30), Family.ALONE).orElseThrow().call())
                .isEqualTo(ChangeCall.NOT_SHOWN);
        assertThat(Trend.of(two.subList(0, 1), NONE, Family.ALONE)).isEmpty();
        assertThat(Trend.of(List.of(two.get(0), two.get(0)), NONE, Family.ALONE))
                .isEmpty();
        assertThat(Trend.of(List.of(), NONE, Family.ALONE)).isEmpty();
    }
}
