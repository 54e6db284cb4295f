package org.toeline.study;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.document.Json;
import org.toeline.ledger.LessonDocument;
import org.toeline.posture.PostureEstimator;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Readings;

/**
 * The room between grip end and trail thigh on the filmed sample lessons, whose players are modelled apart from the program
 * and whose truth lies beside the clips. Marks are a person's, the trail knee's is set two pixels beside its truth.
 */
class HandsToBodyOnSamplesTest {

    /** An interval wider than the whole range that is common practice, 10 to 18 cm, both ways would say nothing. */
    private static final double WIDEST_CM = 16;

    private static final double NARROWEST_CM = 2;

    @ParameterizedTest
    @ValueSource(strings = {"before", "after", "left-handed", "all-good"})
    void itsIntervalHoldsTheTruth(String lesson) throws Exception {
        JsonNode truth = Json.read(Files.readAllBytes(Path.of("sample-media", lesson, "down-the-line.truth.json")))
                .path("readings")
                .path(ReadingKind.HANDS_TO_BODY.id());
        assertThat(truth.path("unit").asText()).isEqualTo("cm");
        Reading reading = Readings.of(PostureEstimator.estimate(KneeMarked.sheet(lesson))).stream()
                .filter(r -> r.kind() == ReadingKind.HANDS_TO_BODY)
                .findFirst()
                .orElseThrow();
        String said = String.format(
                Locale.ROOT,
                "%s: %.1f cm (%.1f to %.1f), truth %.1f cm",
                lesson,
                reading.shownValue(),
                reading.shownLow(),
                reading.shownHigh(),
                truth.path("value").asDouble());
        assertThat(truth.path("value").asDouble()).as(said).isBetween(reading.shownLow(), reading.shownHigh());
        assertThat(reading.shownHigh() - reading.shownLow()).as(said).isBetween(NARROWEST_CM, WIDEST_CM);
        System.out.println(said);
    }

    /** Nothing is said of a thigh of which only the hip is marked. */
    @Test
    void withoutTheKneeThereIsNoReading() throws Exception {
        Path document = Path.of("sample-media", "before", "before.lesson.json");
        assertThat(Readings.of(
                        PostureEstimator.estimate(LessonDocument.read(document).sheet())))
                .isNotEmpty()
                .noneMatch(r -> r.kind() == ReadingKind.HANDS_TO_BODY);
    }
}
