package org.toeline.flight.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import org.junit.jupiter.api.Test;

/** Rank correlations against another library, their intervals against simulated lessons. */
class RankCorrelationTest {

    private final SplittableRandom random = new SplittableRandom(31);

    /** Reference: Apache Commons Math 3, ties included. */
    @Test
    void agreesWithAGeneralLibrary() {
        for (int i = 0; i < 100; i++) {
            int n = 5 + i % 20;
            double[] x = random.doubles(n, 0, 8).map(Math::floor).toArray();
            double[] y = random.doubles(n, 0, 8).map(Math::floor).toArray();
            double theirs = new SpearmansCorrelation().correlation(x, y);
            RankCorrelation.of(x, y).ifPresent(r -> {
                assertThat(r.value()).isCloseTo(theirs, within(1e-12));
                assertThat(r.low()).isLessThanOrEqualTo(r.value());
                assertThat(r.high()).isGreaterThanOrEqualTo(r.value());
                assertThat(r.lessons()).isEqualTo(n);
            });
        }
    }

    /** Simulated lessons: normal with correlation ρ, whose rank correlation is (6/π) asin(ρ/2) (Pearson 1907). */
    @Test
    void intervalsHoldTheTruth() {
        int trials = 3000;
        for (int n : new int[] {8, 15, 30}) {
            for (double rho : new double[] {0, 0.5, 0.8}) {
                double truth = 6 / Math.PI * Math.asin(rho / 2);
                int held = 0;
                for (int i = 0; i < trials; i++) {
                    double[] x = new double[n];
                    double[] y = new double[n];
                    for (int k = 0; k < n; k++) {
                        x[k] = random.nextGaussian();
                        y[k] = rho * x[k] + Math.sqrt(1 - rho * rho) * random.nextGaussian();
                    }
                    RankCorrelation r = RankCorrelation.of(x, y).orElseThrow();
                    held += r.low() <= truth && truth <= r.high() ? 1 : 0;
                }
                assertThat(held / (double) trials)
                        .as("%d lessons, correlation %s", n, rho)
                        .isBetween(0.925, 0.975);
            }
        }
    }

    @Test
    void tooFewLessonsSayNothing() {
        assertThat(RankCorrelation.of(new double[] {1, 2, 3, 4}, new double[] {1, 2, 3, 4}))
                .isEmpty();
        assertThat(RankCorrelation.of(new double[] {1, 1, 1, 1, 1}, new double[] {1, 2, 3, 4, 5}))
                .isEmpty();
    }

    @Test
    void saysGoesWithAndOnHowMuchItRests() {
        double[] tilt = {4, 6, 7, 8, 9, 10, 11, 12, 13};
        double[] launch = {9, 10, 12, 11, 12.5, 13, 12.8, 14, 14.2};
        RankCorrelation with = RankCorrelation.of(tilt, launch).orElseThrow();
        assertThat(with.words()).startsWith("goes with, over 9 lessons (rank correlation 0.9");
        double[] falling = {14, 13, 12, 11.5, 11, 10, 9, 8, 7};
        assertThat(RankCorrelation.of(tilt, falling).orElseThrow().words()).startsWith("goes against");
        double[] none = {5, 9, 2, 8, 1, 7, 3, 6, 4};
        assertThat(RankCorrelation.of(tilt, none).orElseThrow().words()).startsWith("not shown to go with");
    }
}
