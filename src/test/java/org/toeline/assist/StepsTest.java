package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A profile's middle is its middle, however many samples there are. */
class StepsTest {

    /** A ramp symmetric about the middle of the profile has its step there. */
    @ParameterizedTest
    @ValueSource(ints = {40, 41, 64, 65})
    void aStepInTheMiddleIsAtNought(int n) {
        double[][] profile = new double[n][3];
        double middle = (n - 1) / 2.0;
        for (int i = 0; i < n; i++) {
            double level = 100 + 80 * Math.tanh((i - middle) / 3);
            profile[i] = new double[] {level, level, level};
        }
        assertThat(Steps.of(profile, 1))
                .singleElement()
                .satisfies(step -> assertThat(step.t()).isCloseTo(0, within(1e-9)));
    }
}
