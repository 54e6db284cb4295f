package org.toeline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The model whose figures stand first is the one that is nearest to published means ({@link PublishedMeans}, from memory). */
class ModelChoiceTest {

    @Test
    void theFirstModelIsTheNearestForMenAndWomen() {
        for (String who : new String[] {"men", "women", ""}) {
            double first = PublishedMeans.rms(FlightBand.MODELS.get(0), who);
            FlightBand.MODELS.stream()
                    .skip(1)
                    .forEach(m -> assertThat(PublishedMeans.rms(m, who))
                            .as("%s, %s", m.words(), who)
                            .isGreaterThan(first));
        }
    }

    /**
     * Reference: a public repository's notes give 3.9 % (men) and 5.1 % (women) for this regression against tour means of its
     * own choice; ours, from memory and in air of 25 °C, must come near.
     */
    @Test
    void itsErrorIsThatWhichOthersFound() {
        assertThat(100 * PublishedMeans.rms(new TestRange(), "men")).isCloseTo(3.9, within(1.0));
        assertThat(100 * PublishedMeans.rms(new TestRange(), "women")).isCloseTo(5.1, within(1.0));
    }
}
