package org.toeline.posture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Readings;
import org.toeline.reading.Sampled;
import org.toeline.study.Scenes;

/**
 * Propagation of distributions (JCGM 101:2008) against the law of propagation with gradients (JCGM 100:2008), where both
 * apply: 20 000 draws of cameras, landmarks and ball together from the fit's covariance, each put through every
 * reading's formula.
 */
class MonteCarloTest {

    private static final int DRAWS = 20_000;
    /**
     * A standard deviation from that many draws is good to 0.5 %, an end of a 95 % interval to 1.3 % of its half width;
     * the rest is what a straight line leaves of a gently curved formula.
     */
    private static final double SIGMA_SHARE = 0.04;

    private static final double END_SHARE = 0.08;
    /** A bent knee's angle has no sign and is strongly curved near a straight leg: the check does not apply. */
    private static final Set<ReadingKind> CURVED = EnumSet.of(ReadingKind.KNEE_FLEX);

    @Test
    void drawsAndGradientsAgree() {
        Problem problem = new Problem(Scenes.bothViews(31), Set.of());
        Minimum minimum = new Minimum(problem.knowledge, problem.start());
        minimum.descend(40);
        minimum.descend(0);
        minimum.descend(0);
        State state = minimum.state();
        Laplace laplace = new Laplace(problem.knowledge, state, problem.unknowns);
        List<Reading> linear = Readings.of(PostureEstimator.posture(problem, state, laplace));
        double[][] drawn = new double[linear.size()][DRAWS];
        SplittableRandom random = new SplittableRandom(101);
        double[] best = state.x.clone();
        for (int d = 0; d < DRAWS; d++) {
            double[] x = new double[best.length];
            for (int i = 0; i < x.length; i++) {
                x[i] = random.nextGaussian();
            }
            laplace.factor().backward(x);
            for (int i = 0; i < x.length; i++) {
                x[i] += best[i];
            }
            for (int r = 0; r < drawn.length; r++) {
                drawn[r][d] = Readings.value(linear.get(r).kind(), PostureEstimator.coordinates(problem, x));
            }
        }
        for (int r = 0; r < drawn.length; r++) {
            if (!CURVED.contains(linear.get(r).kind())) {
                withOwn(linear.get(r).kind().ownSigma(), drawn[r], random);
                compare(linear.get(r), new Sampled(drawn[r]));
            }
        }
    }

    /** Adds to each draw what the reading itself is not sure of, whatever the body. */
    private static void withOwn(double sigma, double[] drawn, SplittableRandom random) {
        if (sigma > 0) {
            for (int d = 0; d < drawn.length; d++) {
                drawn[d] += sigma * random.nextGaussian();
            }
        }
    }

    private static void compare(Reading linear, Sampled drawn) {
        String name = linear.kind().id();
        double half = (linear.high() - linear.low()) / 2;
        assertThat(drawn.standardUncertainty())
                .as(name)
                .isCloseTo(linear.standardUncertainty(), within(SIGMA_SHARE * linear.standardUncertainty()));
        assertThat(drawn.quantile(0.025)).as(name).isCloseTo(linear.low(), within(END_SHARE * half));
        assertThat(drawn.quantile(0.975)).as(name).isCloseTo(linear.high(), within(END_SHARE * half));
    }
}
