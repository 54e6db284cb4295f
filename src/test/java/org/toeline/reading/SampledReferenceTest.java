package org.toeline.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;

/** Distributions known by draws, against JCGM 101:2008 clause 9.2. */
class SampledReferenceTest {

    private static final int DRAWS = 400_000;
    /** Three standard errors of the standard deviation and of a 2.5 % quantile from that many draws. */
    private static final double SIGMA_WITHIN = 0.007;

    private static final double QUANTILE_WITHIN = 0.026;

    private static Sampled sum(DoubleSupplier term) {
        double[] draws = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            draws[i] = term.getAsDouble() + term.getAsDouble() + term.getAsDouble() + term.getAsDouble();
        }
        return new Sampled(draws);
    }

    /** 9.2.2: four N(0, 1) added: u = 2.0, 95 % interval ± 3.92. */
    @Test
    void fourNormals() {
        SplittableRandom random = new SplittableRandom(1);
        Sampled sum = sum(random::nextGaussian);
        assertThat(sum.standardUncertainty()).isCloseTo(2.0, within(SIGMA_WITHIN));
        assertThat(sum.quantile(0.975)).isCloseTo(3.92, within(QUANTILE_WITHIN));
        assertThat(sum.quantile(0.025)).isCloseTo(-3.92, within(QUANTILE_WITHIN));
        assertThat(sum.probabilityBelow(0)).isCloseTo(0.5, within(0.003));
    }

    /** 9.2.3: four rectangular distributions of standard deviation 1: u = 2.0, ± 3.88 (exactly 3.879407). */
    @Test
    void fourRectangles() {
        SplittableRandom random = new SplittableRandom(2);
        Sampled sum = sum(() -> (2 * random.nextDouble() - 1) * Math.sqrt(3));
        assertThat(sum.standardUncertainty()).isCloseTo(2.0, within(SIGMA_WITHIN));
        assertThat(sum.quantile(0.975)).isCloseTo(3.879407, within(QUANTILE_WITHIN));
    }

    /** Normal quantiles, from any table: 1.959964 at 97.5 %. */
    @Test
    void normalQuantiles() {
        Normal normal = new Normal(3, 2);
        assertThat(normal.quantile(0.975)).isCloseTo(3 + 2 * 1.959964, within(1e-5));
        assertThat(normal.probabilityBelow(1)).isCloseTo(0.158655, within(1e-6));
    }
}
