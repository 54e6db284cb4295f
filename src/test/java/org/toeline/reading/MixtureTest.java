package org.toeline.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class MixtureTest {

    private static final Mixture APART =
            new Mixture(List.of(new Mixture.Part(0.9, new Normal(0, 1)), new Mixture.Part(0.1, new Normal(20, 2))));

    /** Computed by hand: mean 0.9·0 + 0.1·20, variance 0.9·1 + 0.1·4 + 0.9·0.1·20² (law of total variance). */
    @Test
    void meanAndUncertaintyFollowFromTheParts() {
        assertThat(APART.mean()).isCloseTo(2, within(1e-12));
        assertThat(APART.standardUncertainty()).isCloseTo(Math.sqrt(0.9 + 0.4 + 36), within(1e-12));
    }

    /**
     * Standard normal table: the lower end leaves 0.025 / 0.9 = 0.02778 of the first part, z = −1.9145; the upper end
     * leaves 0.025 / 0.1 = 0.25 of the second, 20 + 2 · 0.6745.
     */
    @Test
    void theIntervalHoldsBothHypothesesAndIsNotSymmetric() {
        assertThat(APART.quantile(0.025)).isCloseTo(-1.9145, within(1e-3));
        assertThat(APART.quantile(0.975)).isCloseTo(20 + 2 * 0.67449, within(1e-3));
        assertThat(APART.probabilityBelow(10)).isCloseTo(0.9, within(1e-6));
    }

    /** A doubt of one in a hundred hardly shows: z of 0.975 / 0.99. */
    @Test
    void whatIsUnlikelyStaysOutsideTheInterval() {
        Mixture mixture = new Mixture(
                List.of(new Mixture.Part(0.99, new Normal(0, 1)), new Mixture.Part(0.01, new Normal(20, 2))));
        assertThat(mixture.quantile(0.975)).isCloseTo(2.1661, within(2e-3));
    }

    @Test
    void onePartIsTheNormalItself() {
        Normal normal = new Normal(3, 2);
        Mixture mixture = new Mixture(List.of(new Mixture.Part(1, normal)));
        for (double p : new double[] {0.001, 0.025, 0.5, 0.9, 0.999}) {
            assertThat(mixture.quantile(p)).isCloseTo(normal.quantile(p), within(1e-9));
        }
        assertThat(mixture.standardUncertainty()).isCloseTo(2, within(1e-12));
    }

    @Test
    void weightsAddUpToOne() {
        assertThatThrownBy(() -> new Mixture(List.of(new Mixture.Part(0.5, new Normal(0, 1)))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0.5");
    }
}
