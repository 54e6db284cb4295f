package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.video.Clip;

/** On the sample clips, whose truth files know when the player stands still. */
class AddressFinderTest {

    private static final Path MEDIA = Path.of("sample-media");
    private static final double THREE_FRAMES_S = 3 / 60.0;

    @ParameterizedTest
    @CsvSource({"before, face-on", "before, down-the-line", "after, face-on", "left-handed, down-the-line",
        "all-good, face-on"})
    void findsTheStillBeforeTheTakeaway(String lesson, String view) throws Exception {
        JsonNode truth = new ObjectMapper().readTree(MEDIA.resolve(lesson).resolve(view + ".truth.json").toFile());
        try (Clip clip = Clip.open(MEDIA.resolve(lesson).resolve(view + ".mp4"))) {
            StillSpan span = AddressFinder.find(clip, Progress.NONE).orElseThrow();
            assertThat(span.addressSeconds()).isBetween(truth.path("still").path("from").asDouble(),
                    truth.path("still").path("to").asDouble());
            assertThat(span.startSeconds())
                    .isGreaterThanOrEqualTo(truth.path("waggle").path("to").asDouble() - THREE_FRAMES_S);
            assertThat(span.endSeconds()).isLessThan(truth.path("takeaway").asDouble() + 2 * THREE_FRAMES_S);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"before", "left-handed"})
    void saysWhenThereIsNoSwing(String lesson) throws Exception {
        try (Clip clip = Clip.open(MEDIA.resolve(lesson).resolve("tee.mp4"))) {
            assertThat(AddressFinder.find(clip, Progress.NONE)).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5})
    void stopsWhenAsked(double after) throws Exception {
        try (Clip clip = Clip.open(MEDIA.resolve("before").resolve("tee.mp4"))) {
            Optional<StillSpan> span = AddressFinder.find(clip,
                    share -> share >= after ? Progress.Step.STOP : Progress.Step.GO_ON);
            assertThat(span).isEmpty();
        }
    }
}
