package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.scene.SwingScenes;
import org.toeline.video.Clip;
import org.toeline.video.Progress;

/** On the sample clips, whose truth files know when the player stands still. */
class AddressFinderTest {

    private static final Path MEDIA = Path.of("sample-media");
    private static final double THREE_FRAMES_S = 3 / 60.0;
    private static final double THREE_OF_THIRTY_S = 3 / 30.0;

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "before, face-on",
        "before, down-the-line",
        "after, face-on",
        "after, down-the-line",
        "left-handed, face-on",
        "left-handed, down-the-line",
        "all-good, face-on",
        "all-good, down-the-line"
    })
    void findsTheStillBeforeTheTakeaway(String lesson, String view) throws Exception {
        JsonNode truth = new ObjectMapper()
                .readTree(MEDIA.resolve(lesson).resolve(view + ".truth.json").toFile());
        try (Clip clip = Clip.open(MEDIA.resolve(lesson).resolve(view + ".mp4"))) {
            List<StillSpan> moments = AddressFinder.moments(clip, Progress.NONE);
            assertThat(moments).hasSize(1);
            StillSpan span = moments.get(0);
            assertThat(AddressFinder.find(clip, Progress.NONE)).contains(span);
            assertThat(span.addressSeconds())
                    .isBetween(
                            truth.path("still").path("from").asDouble(),
                            truth.path("still").path("to").asDouble());
            assertThat(span.startSeconds())
                    .isGreaterThanOrEqualTo(truth.path("waggle").path("to").asDouble() - THREE_FRAMES_S);
            assertThat(span.endSeconds()).isCloseTo(truth.path("takeaway").asDouble(), within(THREE_FRAMES_S));
            assertThat(span.confidence()).isBetween(0.75, 0.95);
        }
    }

    /** Rendered scenes whose player walks in, waggles, swings twice: each address, and nothing else. */
    @ParameterizedTest
    @CsvSource({
        "two, face-on, 2",
        "two, down-the-line, 2",
        "walkin, down-the-line, 1",
        "noswing, down-the-line, 0",
        "noswing, face-on, 0",
        "waggles, face-on, 0",
        "through, face-on, 0"
    })
    void everyAddressAndNothingElse(String scene, String view, int count) throws Exception {
        List<double[]> truth = SwingScenes.named(scene).addresses();
        assertThat(truth).hasSize(count);
        try (Clip clip = Clip.open(scene(scene + "-" + view))) {
            List<StillSpan> moments = AddressFinder.moments(clip, Progress.NONE);
            assertThat(moments).hasSize(count);
            for (int i = 0; i < count; i++) {
                StillSpan span = moments.get(i);
                assertThat(span.addressSeconds()).isBetween(truth.get(i)[0], truth.get(i)[1]);
                assertThat(span.startSeconds()).isGreaterThanOrEqualTo(truth.get(i)[0] - THREE_OF_THIRTY_S);
                assertThat(span.endSeconds()).isCloseTo(truth.get(i)[1], within(THREE_OF_THIRTY_S));
                assertThat(span.confidence()).isBetween(0.75, 0.95);
            }
        }
    }

    /** Slow motion that its file does not tell of: four times as long, found where somebody knows the rate. */
    @Test
    void aRateThatSomebodyKnowsCounts() throws Exception {
        Path slow = folder.resolve("slow.mp4");
        try {
            Process ffmpeg = new ProcessBuilder(
                            "ffmpeg",
                            "-v",
                            "error",
                            "-itsscale",
                            "4",
                            "-i",
                            MEDIA.resolve("before").resolve("face-on.mp4").toString(),
                            "-c",
                            "copy",
                            slow.toString())
                    .start();
            Assumptions.assumeTrue(ffmpeg.waitFor() == 0, "this ffmpeg cannot slow a clip down");
        } catch (java.io.IOException e) {
            Assumptions.abort("no ffmpeg on this machine");
        }
        JsonNode truth = new ObjectMapper()
                .readTree(MEDIA.resolve("before").resolve("face-on.truth.json").toFile());
        try (Clip clip = Clip.open(slow)) {
            assertThat(clip.slowMotion().factor()).isEqualTo(1);
            List<StillSpan> moments = AddressFinder.moments(clip, clip.capturedAt(60), Progress.NONE);
            assertThat(moments).hasSize(1);
            assertThat(moments.get(0).endSeconds() / 4)
                    .isCloseTo(truth.path("takeaway").asDouble(), within(THREE_FRAMES_S));
            assertThat(moments.get(0).startSeconds() / 4)
                    .isGreaterThanOrEqualTo(truth.path("waggle").path("to").asDouble() - THREE_FRAMES_S);
        }
    }

    private static Path scene(String name) throws Exception {
        return Path.of(SwingScenes.class.getResource(name + ".mp4").toURI());
    }

    @Test
    void aMomentKeepsItsLimits() {
        assertThatIllegalArgumentException().isThrownBy(() -> new StillSpan(1, 2, 2.5, 0.7));
        assertThatIllegalArgumentException().isThrownBy(() -> new StillSpan(1, 2, 1.5, 0.4));
        assertThat(new StillSpan(1, 2, 1.5).confidence()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"before", "after", "left-handed", "all-good"})
    void saysWhenThereIsNoSwing(String lesson) throws Exception {
        try (Clip clip = Clip.open(MEDIA.resolve(lesson).resolve("tee.mp4"))) {
            assertThat(AddressFinder.find(clip, Progress.NONE)).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5})
    void stopsWhenAsked(double after) throws Exception {
        try (Clip clip = Clip.open(MEDIA.resolve("before").resolve("tee.mp4"))) {
            Optional<StillSpan> span =
                    AddressFinder.find(clip, share -> share >= after ? Progress.Step.STOP : Progress.Step.GO_ON);
            assertThat(span).isEmpty();
        }
    }
}
