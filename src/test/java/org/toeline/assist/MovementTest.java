package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Figures by hand. */
class MovementTest {

    private static final Movement TWO_SWINGS =
            new Movement(List.of(), List.of(), List.of(new StillSpan(1, 1.8, 1.5), new StillSpan(10, 16, 15)));

    @Test
    void tellsOtherTimesOfTheSameStandingStill() {
        assertThat(TWO_SWINGS.besides(1.5, 1)).containsExactly(1.25, 1.65);
        assertThat(TWO_SWINGS.besides(15, 1)).as("half a second at most").containsExactly(14.5, 15.5);
        assertThat(TWO_SWINGS.besides(13, 8)).as("slowed down eight times").containsExactly(11.5, 14.5);
    }

    @Test
    void tellsNoneElsewhere() {
        assertThat(TWO_SWINGS.besides(5, 1)).isEmpty();
        assertThat(new Movement(List.of(), List.of(), List.of()).besides(1.5, 1))
                .isEmpty();
    }
}
